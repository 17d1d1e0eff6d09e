package faintwind.physics.sheet;

import faintwind.physics.AirProperties;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import faintwind.physics.arm.PlannedArm;
import faintwind.physics.arm.Turning;
import faintwind.physics.design.Design;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The arm: sizes to build it by. */
public final class ArmSheet {
  private ArmSheet() {}

  /** The shortest arm that reaches the fastest wanted speed, as long as nothing is planned. */
  static List<Outcome> of(Design design) {
    double fastest = design.use().fastest_m_s();
    return fastest > 0 ? of(List.of(PlannedArm.forSpeed(fastest).tip()), design.air()) : List.of();
  }

  /**
   * The arm that bears everything it is turned at: each size is the largest that one of them asks
   * for.
   *
   * @param turnings radius and speed of each, at least one
   * @param air the air that the arm turns in
   */
  public static List<Outcome> of(List<Turning> turnings, AirState air) {
    List<PlannedArm> arms = turnings.stream().map(PlannedArm::new).toList();
    double density = AirProperties.of(air).density_kg_m3();
    return List.of(
        plain(OutcomeId.ARM_RADIUS, arms, arm -> 1e3 * arm.tip().radius_m()),
        plain(OutcomeId.ARM_FASTEST, arms, arm -> arm.tip().speed_m_s()),
        rough(OutcomeId.ARM_TURNS, arms, arm -> 60 * arm.tip().turns_1_s()),
        rough(OutcomeId.ARM_PULL, arms, PlannedArm::pull_N),
        rough(OutcomeId.ARM_PULL_GRAMS, arms, arm -> 1e3 * arm.pull_N() / Constants.GRAVITY_M_S2),
        rough(OutcomeId.ARM_THREAD_GROWTH, arms, arm -> 1e3 * arm.threadGrowth_m()),
        rough(OutcomeId.ARM_HOLDER_GROWTH, arms, arm -> 1e3 * arm.holderGrowth_m()),
        rough(OutcomeId.ARM_SAG, arms, arm -> 1e3 * arm.sag_m()),
        rough(OutcomeId.ARM_COUNTERWEIGHT, arms, arm -> 1e3 * arm.counterweight_kg()),
        rough(OutcomeId.ARM_FOOT, arms, PlannedArm::foot_kg),
        rough(OutcomeId.ARM_DRAG, arms, arm -> arm.drag_W(density)),
        rough(OutcomeId.ARM_DRIVING_WEIGHT, arms, arm -> 1e3 * arm.drivingWeight_kg(density)),
        plain(OutcomeId.ARM_CLEAR, arms, arm -> 1e3 * arm.clear_m()));
  }

  private static Outcome plain(
      OutcomeId id, List<PlannedArm> arms, ToDoubleFunction<PlannedArm> size) {
    return Outcome.plain(id, arms.stream().mapToDouble(size).max().orElseThrow());
  }

  /** To two figures: what is built from it is no better known. */
  private static Outcome rough(
      OutcomeId id, List<PlannedArm> arms, ToDoubleFunction<PlannedArm> size) {
    double largest = arms.stream().mapToDouble(size).max().orElseThrow();
    return Outcome.plain(id, new BigDecimal(largest).round(new MathContext(2)).doubleValue());
  }
}
