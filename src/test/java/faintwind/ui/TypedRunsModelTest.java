package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.RunKind;
import faintwind.calibration.RunSet;
import faintwind.job.ReadRuns;
import faintwind.job.TypedRuns;
import faintwind.message.Checked;
import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypedRunsModelTest {
  private static final Path SESSION =
      Path.of("src/test/resources/sample-runs/bench-f/in/session.csv");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final TypedRunsModel model = new TypedRunsModel(Messages.of(Locale.ENGLISH));

  private void type(int row, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      model.rows().get(row).fields().get(i).set(texts[i]);
    }
  }

  @Test
  void everyFieldThatIsMissingIsToldAtOnce() {
    type(0, "600", "4o2", "", "10 min", "OL");
    Checked<TypedRunsModel.Noted> read = model.read();
    assertThat(read.isOk()).isFalse();
    assertThat(read.problems())
        .extracting(p -> p.id() + " " + p.where().column().orElse(""))
        .containsExactly(
            "turntable.typed.no-recording ",
            "turntable.typed.not-a-number turns",
            "turntable.typed.not-a-number turns_time_s",
            "turntable.typed.not-a-number spin_stop_s");
  }

  @Test
  void nextRowKeepsTheRadius() {
    type(0, "600", "10", "60", "100", "160");
    model.addRow();
    assertThat(model.rows().get(1).radius().typed().get()).isEqualTo("600");
    assertThat(model.rows().get(1).turns().typed().get()).isEmpty();
  }

  @Test
  void typedStaircaseIsReadBackAsRunsOfOneRecording() throws IOException {
    Path recording = Files.copy(SESSION, folder.resolve("session.csv"));
    model.recording().set(Optional.of(recording));
    type(0, "60 cm", "30", "282,7", "3000", "3600");
    model.addRow();
    type(1, "600", "20", "300", "4000", "4700");
    TypedRunsModel.Noted noted = value(model.read());
    Path table = TypedRuns.write(noted.recording(), noted.spins(), OptionalDouble.of(1));
    RunSet runs = value(ReadRuns.read(table));
    assertThat(runs.runs())
        .extracting(r -> r.kind())
        .isEqualTo(List.of(RunKind.STILL, RunKind.SPIN, RunKind.SPIN));
    assertThat(runs.runs().get(1).arm().orElseThrow().speed_m_s())
        .isCloseTo(2 * Math.PI * 0.6 * 30 / 282.7, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(runs.runs().get(1).recording().signal().last_s()).isLessThanOrEqualTo(4000);
  }

  @Test
  void anEarlierTableIsNeverOverwritten() throws IOException {
    Path recording = Files.copy(SESSION, folder.resolve("session.csv"));
    TypedRuns.Spin spin = new TypedRuns.Spin(600, 10, 60, 3000, 3600, Optional.empty());
    Path first = TypedRuns.write(recording, List.of(spin), OptionalDouble.empty());
    Path second = TypedRuns.write(recording, List.of(spin), OptionalDouble.empty());
    assertThat(second).isNotEqualTo(first);
    assertThat(first).exists();
  }

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }
}
