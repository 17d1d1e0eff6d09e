package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepRunsTest {
  private static final Path RUNS = Path.of("src/test/resources/sample-runs/bench-f/in/runs.csv");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private Enter enter() throws IOException {
    Path instrument = folder.resolve("rind");
    Enter.Person person = Enter.Person.named("Ida");
    if (!Files.exists(instrument)) {
      Enter.begin(instrument, new Event.InstrumentCreated("Rind", true), Clock.systemUTC(), person);
    }
    InstrumentView view = value(InstrumentView.open(instrument, design -> Optional.empty()));
    return new Enter(view, Clock.systemUTC(), person);
  }

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void tableAndRecordingsAreCopiedAndReadTheSame() throws IOException {
    Path instrument = folder.resolve("rind");
    JournalEntry entry = value(KeepRuns.keep(instrument, RUNS, enter()));
    Event.FileAdded added = (Event.FileAdded) entry.event();
    assertThat(added.file()).isEqualTo("runs/set-1/runs.csv");
    Path kept = instrument.resolve(added.file());
    assertThat(value(ReadRuns.read(kept)).runs()).hasSameSizeAs(value(ReadRuns.read(RUNS)).runs());
    assertThat(Files.readAllBytes(kept)).isEqualTo(Files.readAllBytes(RUNS));
  }

  @Test
  void secondSetNeverTouchesTheFirst() throws IOException {
    Path instrument = folder.resolve("rind");
    value(KeepRuns.keep(instrument, RUNS, enter()));
    JournalEntry second = value(KeepRuns.keep(instrument, RUNS, enter()));
    assertThat(((Event.FileAdded) second.event()).file()).isEqualTo("runs/set-2/runs.csv");
  }

  @Test
  void tableInTheFolderIsOnlyNoted() throws IOException {
    Path instrument = folder.resolve("rind");
    value(KeepRuns.keep(instrument, RUNS, enter()));
    Path kept = instrument.resolve("runs/set-1/runs.csv");
    JournalEntry again = value(KeepRuns.keep(instrument, kept, enter()));
    assertThat(((Event.FileAdded) again.event()).file()).isEqualTo("runs/set-1/runs.csv");
    assertThat(instrument.resolve("runs/set-2")).doesNotExist();
  }

  @Test
  void refusedTableLeavesNothingBehind() throws IOException {
    Path wrong = Files.writeString(folder.resolve("runs.csv"), "run,file\nx,missing.csv\n");
    Checked<JournalEntry> kept = KeepRuns.keep(folder.resolve("rind"), wrong, enter());
    assertThat(kept.isOk()).isFalse();
    assertThat(folder.resolve("rind/runs/set-1")).doesNotExist();
  }
}
