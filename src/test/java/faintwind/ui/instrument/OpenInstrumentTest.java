package faintwind.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.record.Event.NoteWritten;
import faintwind.record.InstrumentState;
import faintwind.ui.Cellar;
import faintwind.ui.NoFiles;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Look;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.part.Notes;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.SimpleStringProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries from the window, without a window: order, refusal, a disk that fails and comes back. */
class OpenInstrumentTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  /** Stands in for the JavaFX thread: what comes back is run when the test says so. */
  private final BlockingQueue<Runnable> back = new LinkedBlockingQueue<>();

  private OpenInstrument open(Path instrument) throws IOException {
    Clock clock = Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC);
    Workspace workspace = new Workspace(folder, clock);
    Standpoint standpoint = Standpoint.of(workspace.opening().open(instrument), Cellar.NOW);
    Desk desk =
        new Desk(
            Messages.of(Locale.ENGLISH),
            new Background(back::add),
            new Notes(),
            place -> {},
            NoFiles.ASKED,
            new Look(),
            clock);
    return new OpenInstrument(
        desk, standpoint, workspace.opening(), new SimpleStringProperty("Ida"));
  }

  private void runBack() throws InterruptedException {
    Runnable next = back.poll(20, TimeUnit.SECONDS);
    assertThat(next).as("an answer within 20 s").isNotNull();
    if (next != null) {
      next.run();
    }
  }

  private static int notes(InstrumentState state) {
    return state.standing(NoteWritten.class).size();
  }

  @Test
  void entryThatCannotBeWrittenWaitsAndIsTriedAgain() throws Exception {
    OpenInstrument instrument = open(Cellar.begin("Rind 2").into(folder, "r2"));
    boolean[] full = {true};
    instrument.enter(
        enter -> {
          if (full[0]) {
            throw new IOException("No space left on device");
          }
          return enter.plain(Optional.empty(), new NoteWritten("kept"));
        });
    runBack();
    assertThat(instrument.trouble().get()).contains("No space left").contains("stays");
    assertThat(notes(instrument.state())).isZero();
    full[0] = false;
    instrument.tryAgain();
    runBack();
    assertThat(instrument.trouble().get()).isEmpty();
    assertThat(notes(instrument.state())).isEqualTo(1);
  }

  @Test
  void refusedEntryIsSaidAndHoldsNothingUp() throws Exception {
    OpenInstrument instrument = open(Cellar.begin("Rind 2").into(folder, "r2"));
    instrument.enter(enter -> enter.open("no-such-step"));
    instrument.enter(enter -> enter.plain(Optional.empty(), new NoteWritten("after")));
    runBack();
    assertThat(instrument.trouble().get()).contains("no-such-step");
    runBack();
    assertThat(notes(instrument.state())).isEqualTo(1);
  }
}
