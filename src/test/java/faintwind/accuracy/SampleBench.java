package faintwind.accuracy;

import faintwind.calibration.Calibration;
import faintwind.calibration.Origin;
import faintwind.calibration.fit.judging.CalibrationAssembly;
import faintwind.calibration.fit.judging.Choice;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;

/** One bench of the sample runs: its calibration and its scored logs. */
final class SampleBench {
  private static final Path RUNS = Path.of("src/test/resources/sample-runs");

  private final Path folder;
  private final Path scratch;
  private final Calibration calibration;

  private SampleBench(Path folder, Path scratch, Calibration calibration) {
    this.folder = folder;
    this.scratch = scratch;
    this.calibration = calibration;
  }

  static SampleBench calibrated(String letter, Path scratch) throws IOException {
    Path folder = RUNS.resolve("bench-" + letter);
    Checked<RunSet> runs = ReadRuns.read(folder.resolve("in/runs.csv"));
    RunSet set = value(runs);
    FitResult fit = value(FitToRuns.fit(set, () -> false));
    Calibration calibration =
        CalibrationAssembly.of(
            Choice.only(fit),
            set,
            new Origin(
                "bench-" + letter, OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of()),
            Optional.empty());
    return new SampleBench(folder, scratch, calibration);
  }

  static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new IllegalStateException(problems.toString());
        });
  }

  Calibration calibration() {
    return calibration;
  }

  ScoredLog log(String name, SpeedSettings settings) throws IOException {
    return ScoredLog.convert(
        calibration,
        folder.resolve("in/field_" + name + ".csv"),
        folder.resolve("truth/field_" + name + "_truth.csv"),
        settings,
        scratch);
  }
}
