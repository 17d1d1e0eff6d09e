package faintwind.calibration.plan;

import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.FieldTexts;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The arm on the bench.
 *
 * @param radii_m radii at which the balls can sit, to the ball's centre, m; at least one; sorted
 *     with the smallest first
 * @param way how data and power come off the arm
 */
public record ArmSetup(List<Uncertain> radii_m, DataWay way) {
  /** Nearer to the axis the two sides of a ball of 13 mm differ by over a quarter of the speed. */
  static final Field RADIUS = Field.number("plan.radius_mm", 50, 5000).usually("600").needed();

  static final Field U_RADIUS = Field.number("plan.u_radius_mm", 0.01, 100).usually("2");
  static final Field WAY =
      Field.word("plan.way", DataWay.Kind.values()).usually(DataWay.Kind.RIDING_LOGGER.word());
  static final Field CABLE_TURNS = Field.number("plan.cable_turns", 1, 100_000);
  static final Field BATTERY = Field.number("plan.battery_h", 0.1, 1000);

  private static final List<Field> FIELDS = List.of(RADIUS, U_RADIUS, WAY, CABLE_TURNS, BATTERY);

  public ArmSetup {
    if (radii_m.isEmpty()) {
      throw new IllegalArgumentException("no radius");
    }
    for (Uncertain radius : radii_m) {
      RADIUS.require(1e3 * radius.value());
      radius.u().ifPresent(u -> U_RADIUS.require(1e3 * u));
    }
    way.turnBudget().ifPresent(CABLE_TURNS::require);
    way.battery_s().ifPresent(s -> BATTERY.require(s / 3600));
    radii_m =
        radii_m.stream().sorted(Comparator.comparingDouble(Uncertain::value)).distinct().toList();
  }

  /** The arm, of what was given for its fields; refused with everything that no arm can have. */
  public static Checked<ArmSetup> of(FieldTexts texts) {
    List<Problem> problems = new ArrayList<>(texts.problems(FIELDS));
    String way = texts.entry(WAY).orElse("");
    if (problems.isEmpty() && way.equals(DataWay.Kind.CABLE.word()) != texts.has(CABLE_TURNS)) {
      problems.add(Problem.error("plan.cable-turns", texts.where(CABLE_TURNS), way));
    }
    return problems.isEmpty()
        ? Checked.ok(
            new ArmSetup(
                radii(texts),
                new DataWay(
                    texts.word(WAY, DataWay.Kind.class),
                    texts.optional(CABLE_TURNS),
                    texts.optional(BATTERY, 3600))))
        : Checked.refused(problems);
  }

  /** Each radius with its uncertainty, or with the one that was given for all. */
  private static List<Uncertain> radii(FieldTexts texts) {
    List<OptionalDouble> radii_mm = texts.numbers(RADIUS);
    List<OptionalDouble> u_mm = texts.numbers(U_RADIUS);
    List<Uncertain> radii = new ArrayList<>();
    for (int i = 0; i < radii_mm.size(); i++) {
      double radius_m = radii_mm.get(i).orElseThrow() / 1000;
      OptionalDouble u =
          u_mm.isEmpty() ? OptionalDouble.empty() : u_mm.get(Math.min(i, u_mm.size() - 1));
      radii.add(
          u.isPresent() ? Uncertain.of(radius_m, u.getAsDouble() / 1000) : Uncertain.of(radius_m));
    }
    return radii;
  }
}
