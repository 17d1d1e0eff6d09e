package faintwind.command;

import faintwind.calibration.speed.LogAir;
import faintwind.message.Problem;
import faintwind.message.Where;
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
    require("--air-C", air_C, -73, 126, problems);
    require("--pressure-hPa", pressure_hPa, 300, 1200, problems);
    require("--rh-pct", rh_pct, 0, 100, problems);
    return problems;
  }

  LogAir air() {
    return new LogAir(si(air_C, 1, 273.15), si(pressure_hPa, 100, 0), si(rh_pct, 0.01, 0));
  }

  private static OptionalDouble si(@Nullable Double value, double scale, double shift) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value * scale + shift);
  }

  private static void require(
      String name, @Nullable Double value, double low, double high, List<Problem> problems) {
    if (value != null && !(value >= low && value <= high)) {
      String range = (long) low + " … " + (long) high;
      problems.add(Problem.error("usage.range", Where.NOWHERE, String.valueOf(value), name, range));
    }
  }
}
