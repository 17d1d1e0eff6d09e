package faintwind.calibration.plan;

import faintwind.message.Field;
import java.util.OptionalDouble;

/**
 * Everything a plan starts from.
 *
 * @param arm the arm on the bench
 * @param wish what the session should bring and may cost
 * @param response how the instrument answers
 * @param uCarried standard uncertainty of the share of carried air, where it is or will be measured
 *     and stated with the runs
 * @param asymmetry standard deviation of half the relative difference between the two directions
 */
public record PlanRequest(
    ArmSetup arm, PlanWish wish, Response response, OptionalDouble uCarried, double asymmetry) {
  /** Half the difference between the directions where nothing is known (own choice, no source). */
  public static final double USUAL_ASYMMETRY = 0.003;

  static final Field U_SWIRL = Field.number("plan.u_swirl_pct", 0.01, 20);
  static final Field ASYMMETRY =
      Field.number("plan.asymmetry_pct", 0.01, 20).usually(Field.plain(100 * USUAL_ASYMMETRY));

  public PlanRequest {
    if (!(asymmetry > 0 && asymmetry < 0.5)) {
      throw new IllegalArgumentException("asymmetry = " + asymmetry + ", allowed 0 to 0.5");
    }
  }

  /** A request where the carried air is left to the rests. */
  public static PlanRequest of(ArmSetup arm, PlanWish wish, Response response) {
    return new PlanRequest(arm, wish, response, OptionalDouble.empty(), USUAL_ASYMMETRY);
  }
}
