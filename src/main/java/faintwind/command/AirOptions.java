package faintwind.command;

import faintwind.calibration.speed.LogAir;
import faintwind.message.Problem;
import faintwind.physics.AirField;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The state of the air for a whole log whose rows do not tell it. */
final class AirOptions {
  @Option(names = "--air-C", paramLabel = "C", descriptionKey = "air-C")
  private @Nullable Double air_C;

  @Option(names = "--pressure-hPa", paramLabel = "HPA", descriptionKey = "pressure-hPa")
  private @Nullable Double pressure_hPa;

  @Option(names = "--rh-pct", paramLabel = "PCT", descriptionKey = "rh-pct")
  private @Nullable Double rh_pct;

  /** Every number that no air can have. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    require("--air-C", air_C, AirField.TEMPERATURE, problems);
    require("--pressure-hPa", pressure_hPa, AirField.PRESSURE, problems);
    require("--rh-pct", rh_pct, AirField.HUMIDITY, problems);
    return problems;
  }

  LogAir air() {
    return new LogAir(
        si(air_C, AirField.TEMPERATURE),
        si(pressure_hPa, AirField.PRESSURE),
        si(rh_pct, AirField.HUMIDITY));
  }

  private static OptionalDouble si(@Nullable Double value, AirField air) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(air.si(value));
  }

  private static void require(
      String option, @Nullable Double value, AirField air, List<Problem> problems) {
    OptionRange.trouble(option, value, air.field()).ifPresent(problems::add);
  }
}
