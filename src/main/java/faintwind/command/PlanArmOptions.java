package faintwind.command;

import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The arm on the bench, as the command line tells it. */
final class PlanArmOptions {
  @Option(
      names = "--radius-mm",
      required = true,
      split = ",",
      paramLabel = "MM",
      descriptionKey = "faintwind.plan.radius-mm")
  private List<Double> radii_mm = List.of();

  @Option(names = "--u-radius-mm", paramLabel = "MM", descriptionKey = "faintwind.plan.u-radius-mm")
  private double uRadius_mm = 2;

  @Option(names = "--way", paramLabel = "WAY", descriptionKey = "faintwind.plan.way")
  private String way = DataWay.Kind.RIDING_LOGGER.word();

  @Option(names = "--cable-turns", paramLabel = "TURNS", descriptionKey = "faintwind.plan.turns")
  private @Nullable Double cableTurns;

  @Option(names = "--battery-h", paramLabel = "HOURS", descriptionKey = "faintwind.plan.battery-h")
  private @Nullable Double battery_h;

  /** Everything that no arm can have. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (double radius_mm : radii_mm) {
      require("--radius-mm", radius_mm, 20, 5000, problems);
    }
    require("--u-radius-mm", uRadius_mm, 0.01, 100, problems);
    Optional<DataWay.Kind> kind = kind();
    if (kind.isEmpty()) {
      String known =
          Arrays.stream(DataWay.Kind.values())
              .map(DataWay.Kind::word)
              .collect(Collectors.joining(", "));
      problems.add(Problem.error("usage.plan-way", Where.NOWHERE, way, known));
    } else if ((kind.get() == DataWay.Kind.CABLE) != (cableTurns != null)) {
      problems.add(Problem.error("usage.plan-cable", Where.NOWHERE, way));
    }
    if (cableTurns != null) {
      require("--cable-turns", cableTurns, 1, 100_000, problems);
    }
    if (battery_h != null) {
      require("--battery-h", battery_h, 0.1, 1000, problems);
    }
    return problems;
  }

  private Optional<DataWay.Kind> kind() {
    return Arrays.stream(DataWay.Kind.values()).filter(k -> k.word().equals(way)).findFirst();
  }

  /** The arm; ask for problems first. */
  ArmSetup arm() {
    return new ArmSetup(
        radii_mm.stream().map(mm -> Uncertain.of(mm / 1000, uRadius_mm / 1000)).toList(),
        new DataWay(
            kind().orElseThrow(),
            cableTurns == null ? OptionalDouble.empty() : OptionalDouble.of(cableTurns),
            battery_h == null ? OptionalDouble.empty() : OptionalDouble.of(3600 * battery_h)));
  }

  static void require(String name, double value, double low, double high, List<Problem> problems) {
    if (!(value >= low && value <= high)) {
      String range = low + " … " + high;
      problems.add(Problem.error("usage.range", Where.NOWHERE, String.valueOf(value), name, range));
    }
  }
}
