package faintwind.command;

import faintwind.calibration.Measured.By;
import faintwind.job.formula.MeasuredWhen;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** When and with what runs were measured, as options. */
final class MeasuredOptions {
  @Option(
      names = "--measured-on",
      paramLabel = "TIME",
      descriptionKey = "faintwind.calibrate.measured-on")
  private @Nullable OffsetDateTime on;

  @Option(
      names = "--operator",
      paramLabel = "NAME",
      descriptionKey = "faintwind.calibrate.operator")
  private @Nullable String operator;

  @Option(names = "--place", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.place")
  private @Nullable String place;

  @Option(names = "--arm", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.arm")
  private @Nullable String arm;

  @Option(names = "--meter", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.meter")
  private @Nullable String meter;

  @Option(names = "--logger", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.logger")
  private @Nullable String logger;

  MeasuredWhen said() {
    Map<By, String> by = new EnumMap<>(By.class);
    put(by, By.OPERATOR, operator);
    put(by, By.PLACE, place);
    put(by, By.ARM, arm);
    put(by, By.METER, meter);
    put(by, By.LOGGER, logger);
    return new MeasuredWhen(Optional.ofNullable(on), by);
  }

  private static void put(Map<By, String> by, By which, @Nullable String text) {
    if (text != null && !text.isBlank()) {
      by.put(which, text);
    }
  }
}
