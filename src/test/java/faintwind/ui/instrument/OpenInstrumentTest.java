package faintwind.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event.NoteWritten;
import faintwind.record.InstrumentState;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import java.io.IOException;
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
}
