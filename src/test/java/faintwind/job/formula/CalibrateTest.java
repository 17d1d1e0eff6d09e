package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateTest {
  private static final Path BENCH = Path.of("src/test/resources/sample-runs/bench-g/in");
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T14:30:00Z"), ZoneOffset.ofHours(1));
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);

  @TempDir Path folder;

  @Test
  void tableBecomesACalibrationThatReadsBackAsItIs() throws IOException {
    copyBench();
    Files.writeString(folder.resolve("chain.json"), "{\"input\":\"difference_K\",\"type\":\"K\"}");
    Path target = folder.resolve("cal.json");
    List<String> stages = new ArrayList<>();
    Calibrate job = job(4, 0.5);
    Calibrate.Outcome outcome =
        ok(job.write(folder.resolve("runs.csv"), target, listening(stages)));
    Calibration written = outcome.calibration();
    Calibration read = ok(CalibrationFile.read(target, "cal.json"));

    assertThat(read.formula().values()).isEqualTo(written.formula().values());
    assertThat(read.evidence()).isEqualTo(written.evidence());
    assertThat(read.origin().instrumentId()).isEqualTo("cellar <left>");
    assertThat(read.origin().created()).isEqualTo("2026-11-25T15:30:00+01:00");
    assertThat(read.origin().inputSha256())
        .containsOnlyKeys("runs.csv", "zero.csv", "session.csv", "chain.json")
        .containsEntry("zero.csv", Sha256.of(folder.resolve("zero.csv")));
    assertThat(read.evidence().runs()).hasSize(9);
    assertThat(read.evidence().monteCarlo().orElseThrow().refits()).isBetween(1, 4);
    assertThat(outcome.shortfalls())
        .extracting(Problem::id)
        .containsExactly("calibrate.limit-not-met");
    assertThat(read.warnings()).extracting(Problem::id).contains("calibrate.limit-not-met");
    Path page = folder.resolve("cal.html");
    job.writePage(outcome, page);
    assertThat(page)
        .content()
        .contains("<h1>Calibration of cellar &lt;left&gt;</h1>")
        .contains("At most 0.5\u00a0% was asked for.")
        .contains("<svg");
    assertThat(stages).contains("read", "fit", "refits", "judge", "write");
  }

  @Test
  void refusedTableLeavesTheOldCalibration() throws IOException {
    Path target = folder.resolve("cal.json");
    Files.writeString(target, "old");
    Path table = Path.of("src/test/resources/refused/runs-table/only-one-run.csv");
    assertThat(job(0, 50).write(table, target, JobWatch.NOBODY).isOk()).isFalse();
    assertThat(target).hasContent("old");
  }

  @Test
  void cancelledCalibrationWritesNothing() {
    Path target = folder.resolve("cal.json");
    JobWatch impatient =
        new JobWatch() {
          @Override
          public void progress(String stage, long done, long total) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    assertThatThrownBy(() -> job(0, 50).write(BENCH.resolve("runs.csv"), target, impatient))
        .isInstanceOf(Cancelled.class);
    assertThat(target).doesNotExist();
  }

  private static Calibrate job(int refits, double limit_pct) {
    return new Calibrate(
        CLOCK,
        ENGLISH,
        new Calibrate.Settings(Optional.of("cellar <left>"), refits, OptionalDouble.of(limit_pct)));
  }

  private void copyBench() throws IOException {
    try (Stream<Path> files = Files.list(BENCH)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(String.valueOf(file.getFileName())));
      }
    }
  }

  private static JobWatch listening(List<String> stages) {
    List<String> heard = Collections.synchronizedList(stages);
    return new JobWatch() {
      @Override
      public void progress(String stage, long done, long total) {
        heard.add(stage);
      }

      @Override
      public boolean cancelled() {
        return false;
      }
    };
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }
}
