package faintwind.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.record.Event.NoteWritten;
import faintwind.record.InstrumentState;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries from the window, without a window: order, refusal, a disk that fails and comes back. */
class OpenInstrumentTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private static int notes(InstrumentState state) {
    return state.standing(NoteWritten.class).size();
  }

  @Test
  void entryThatCannotBeWrittenWaitsAndIsTriedAgain() throws Exception {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument = quiet.open(Cellar.begin("Rind 2").into(folder, "r2"));
    boolean[] full = {true};
    instrument.enter(
        enter -> {
          if (full[0]) {
            throw new IOException("No space left on device");
          }
          return enter.plain(Optional.empty(), new NoteWritten("kept"));
        });
    quiet.answer();
    assertThat(instrument.trouble().get()).contains("No space left").contains("stays");
    assertThat(notes(instrument.state())).isZero();
    full[0] = false;
    instrument.tryAgain();
    quiet.answer();
    assertThat(instrument.trouble().get()).isEmpty();
    assertThat(notes(instrument.state())).isEqualTo(1);
  }

  @Test
  void refusedEntryIsSaidAndHoldsNothingUp() throws Exception {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument = quiet.open(Cellar.begin("Rind 2").into(folder, "r2"));
    instrument.enter(enter -> enter.open("no-such-step"));
    instrument.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("after")));
    quiet.answer();
    assertThat(instrument.trouble().get()).contains("no-such-step");
    quiet.answer();
    assertThat(notes(instrument.state())).isEqualTo(1);
  }

  @Test
  void theSecondWindowReadsAndMayWriteOnceTheFirstIsClosed() throws Exception {
    Path path = Cellar.begin("Rind 2").into(folder, "r2");
    Quiet quiet = new Quiet(folder);
    OpenInstrument first = quiet.open(path, "Käthe");
    first.hold();
    quiet.answer();
    assertThat(first.trouble().get()).isEmpty();
    OpenInstrument second = quiet.open(path, "Jo");
    second.hold();
    quiet.answer();
    assertThat(second.trouble().get()).contains("Käthe").contains("can be read here");
    assertThat(second.now().get().view().writable()).isFalse();
    second.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("no")));
    quiet.answer();
    assertThat(second.trouble().get()).contains("Käthe");
    assertThat(notes(second.state())).isZero();
    first.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("yes")));
    quiet.answer();
    assertThat(notes(first.state())).isEqualTo(1);
    first.close();
    second.tryAgain();
    quiet.answer();
    quiet.answer();
    assertThat(second.trouble().get()).isEmpty();
    assertThat(notes(second.state())).isEqualTo(1);
    second.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("now")));
    quiet.answer();
    assertThat(notes(second.state())).isEqualTo(2);
    second.close();
  }

  @Test
  void whatIsInMemoryGoesToAnotherPlaceWhenTheStickIsPulledOut() throws Exception {
    Path path = Cellar.begin("Rind 2").into(folder, "r2");
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument = quiet.open(path);
    instrument.hold();
    quiet.answer();
    instrument.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("on the stick")));
    quiet.answer();
    Files.move(path, folder.resolve("pulled-out"));
    instrument.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("waits")));
    quiet.answer();
    assertThat(instrument.stranded().get()).isTrue();
    assertThat(instrument.trouble().get()).isNotEmpty();
    Path place = folder.resolve("on the disk");
    instrument.keepElsewhere(place);
    quiet.answer();
    while (notes(instrument.state()) < 2) {
      quiet.answer();
    }
    assertThat(instrument.folder()).isEqualTo(place);
    assertThat(instrument.stranded().get()).isFalse();
    assertThat(new InstrumentFolder(place).audit().problems()).isEmpty();
    assertThat(Files.readString(place.resolve("journal.jsonl")))
        .startsWith(Files.readString(folder.resolve("pulled-out/journal.jsonl")))
        .contains("waits");
    instrument.close();
  }
}
