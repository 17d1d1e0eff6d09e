package faintwind.physics.sheet;

import faintwind.physics.AirProperties;
import faintwind.physics.arm.PlannedArm;
import faintwind.physics.design.Design;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** The arm that reaches the fastest wanted speed: sizes to build it by. */
final class ArmSheet {
  private ArmSheet() {}

  static List<Outcome> of(Design design) {
    double fastest = design.use().fastest_m_s();
    if (!(fastest > 0)) {
      return List.of();
    }
    PlannedArm arm = PlannedArm.forSpeed(fastest);
    double density = AirProperties.of(design.air()).density_kg_m3();
    return List.of(
        Outcome.plain(OutcomeId.ARM_RADIUS, 1e3 * arm.tip().radius_m()),
        rough(OutcomeId.ARM_TURNS, 60 * arm.tip().turns_1_s()),
        rough(OutcomeId.ARM_PULL, arm.pull_N()),
        rough(OutcomeId.ARM_THREAD_GROWTH, 1e3 * arm.threadGrowth_m()),
        rough(OutcomeId.ARM_HOLDER_GROWTH, 1e3 * arm.holderGrowth_m()),
        rough(OutcomeId.ARM_SAG, 1e3 * arm.sag_m()),
        rough(OutcomeId.ARM_COUNTERWEIGHT, 1e3 * arm.counterweight_kg()),
        rough(OutcomeId.ARM_FOOT, arm.foot_kg()),
        rough(OutcomeId.ARM_DRAG, arm.drag_W(density)),
        rough(OutcomeId.ARM_DRIVING_WEIGHT, 1e3 * arm.drivingWeight_kg(density)),
        Outcome.plain(OutcomeId.ARM_CLEAR, 1e3 * arm.clear_m()));
  }

  /** To two figures: what is built from it is no better known. */
  private static Outcome rough(OutcomeId id, double value) {
    double two = new BigDecimal(value).round(new MathContext(2)).doubleValue();
    return Outcome.plain(id, two);
  }
}
