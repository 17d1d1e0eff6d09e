package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.speed.TestCalibration;
import faintwind.files.run.SpeedWriter;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThreadsOfAConversionTest {
  private static final int ROWS = 9_000;
  private final Calibration calibration = TestCalibration.ofModel();
  private final SpeedSettings settings = SpeedSettings.usual(calibration);
  private final Convert convert = new Convert(calibration, "cellar.json", settings);

  @TempDir Path folder;

  @Test
  void threadsGiveWhatOneThreadGives() throws IOException {
    List<String> lines = new ArrayList<>(List.of("time_s,delta_K,speed_m_s,u95_m_s,flag"));
    List<SpeedRow> alone = new ArrayList<>();
    SpeedEstimator estimator = SpeedEstimator.smoothing(calibration, settings);
    OptionalDouble none = OptionalDouble.empty();
    for (int i = 0; i < ROWS; i++) {
      OptionalDouble signal =
          i % 700 == 699 ? none : OptionalDouble.of(Double.parseDouble(read(i)));
      estimator.accept(
          new LogSample(OptionalDouble.of(i), signal, LogAir.UNKNOWN, none), alone::add);
    }
    estimator.finish(alone::add);
    for (int i = 0; i < ROWS; i++) {
      lines.add(row(i) + "," + SpeedWriter.cells(alone.get(i)));
    }
    Path out = folder.resolve("speeds.csv");
    assertThat(convert.file(log(), out, JobWatch.NOBODY).isOk()).isTrue();
    assertThat(Files.readAllLines(out)).isEqualTo(lines);
  }

  @Test
  void logsOfAFolderGiveWhatOneOnThreadsGives() throws IOException {
    Path log = log();
    Path out = folder.resolve("speeds.csv");
    assertThat(convert.file(log, out, JobWatch.NOBODY).isOk()).isTrue();
    List<Path> logs = new ArrayList<>();
    for (int i = 0; i < 2 * LogsAtOnce.threads() + 1; i++) {
      logs.add(Files.copy(log, folder.resolve("log-" + i + ".csv")));
    }
    Path speeds = folder.resolve("speeds");
    List<Convert.LogOutcome> outcomes = convert.files(logs, speeds, JobWatch.NOBODY);
    assertThat(outcomes).hasSameSizeAs(logs).allMatch(each -> each.outcome().isOk());
    for (Path each : logs) {
      assertThat(Convert.target(each, speeds)).hasSameTextualContentAs(out);
    }
  }

  @Test
  void minutesDoNotChangeTheRows() throws IOException {
    Path with = folder.resolve("with.csv");
    Path without = folder.resolve("without.csv");
    Path minutes = folder.resolve("minutes.csv");
    assertThat(convert.withMinutes(minutes).file(log(), with, JobWatch.NOBODY).isOk()).isTrue();
    assertThat(convert.file(log(), without, JobWatch.NOBODY).isOk()).isTrue();
    assertThat(with).hasSameTextualContentAs(without);
    assertThat(Files.readAllLines(minutes)).hasSize(2 + ROWS / 60);
  }

  @Test
  void cancelledConversionTellsItsProgressAndLeavesNothing() throws IOException {
    AtomicLong told = new AtomicLong();
    JobWatch impatient =
        new JobWatch() {
          @Override
          public void progress(String stage, long done, long total) {
            told.set(done);
          }

          @Override
          public boolean cancelled() {
            return told.get() > 0;
          }
        };
    Path out = folder.resolve("speeds.csv");
    convert.file(log(), out, impatient);
    assertThat(told.get()).isBetween(1L, ROWS - 1L);
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(folder.resolve("log.csv"));
    }
  }

  private Path log() throws IOException {
    StringBuilder text = new StringBuilder("time_s,delta_K\n");
    for (int i = 0; i < ROWS; i++) {
      text.append(row(i)).append('\n');
    }
    return Files.writeString(folder.resolve("log.csv"), text);
  }

  private static String row(int i) {
    return i + "," + (i % 700 == 699 ? "x" : read(i));
  }

  private static String read(int i) {
    long thousandths = Math.round(1000 * (15 + 3 * Math.sin(i / 300.0))) + i * 7919 % 31;
    return thousandths / 1000 + "." + String.valueOf(1000 + thousandths % 1000).substring(1);
  }
}
