package faintwind.command.air;

import faintwind.calibration.speed.SpeedSettings;
import faintwind.command.OptionRange;
import faintwind.job.air.AirSource;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What speeds are taken from, beside those that a table holds itself. */
final class SourceOptions {
  private static final Field SETTLE = Field.number("air.settle_s", 1, 86_400);

  @Option(names = "--calibration", paramLabel = "CAL.json", descriptionKey = "air.calibration")
  private @Nullable Path calibration;

  @Option(names = "--average-s", paramLabel = "SECONDS", descriptionKey = "air.average-s")
  private @Nullable Double average_s;

  /** Of a command that goes from place to place. */
  static final class Stays {
    @Option(names = "--speeds", paramLabel = "SPEEDS.csv", descriptionKey = "air.speeds")
    private @Nullable Path speeds;

    @Option(names = "--settle-s", paramLabel = "SECONDS", descriptionKey = "air.settle-s")
    private @Nullable Double settle_s;

    Optional<Path> speeds() {
      return Optional.ofNullable(speeds);
    }

    Optional<Double> settle_s() {
      return Optional.ofNullable(settle_s);
    }
  }

  Optional<Path> calibration() {
    return Optional.ofNullable(calibration);
  }

  /** What is wrong with the numbers. */
  List<Problem> misuse(Optional<Stays> stays) {
    List<Problem> problems = new ArrayList<>();
    OptionRange.trouble("--average-s", average_s, SpeedSettings.AVERAGE).ifPresent(problems::add);
    stays
        .flatMap(Stays::settle_s)
        .flatMap(s -> OptionRange.trouble("--settle-s", s, SETTLE))
        .ifPresent(problems::add);
    return problems;
  }

  Checked<AirSource> open(Optional<Path> speeds) throws IOException {
    return AirSource.open(speeds, calibration(), Optional.ofNullable(average_s));
  }
}
