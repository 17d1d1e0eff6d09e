package faintwind.physics.arm;

import faintwind.physics.Constants;

/**
 * Whether a stand tips: moments about the edge of its foot (statics of a rigid body, any textbook
 * of mechanics).
 *
 * @param foot_m from the axis to the nearest edge of the foot, m
 * @param height_m from the floor to the arm, m
 */
public record Stand(double foot_m, double height_m) {

  public Stand {
    if (!(foot_m > 0 && height_m >= 0)) {
      throw new IllegalArgumentException(
          "foot " + foot_m + " m above 0, height " + height_m + " m 0 or more");
    }
  }

  /**
   * Mass that the foot must have so that it just does not tip while a mass on one side is not
   * balanced, kg: M·g·b = m·g·(r − b) + m·(v²/r)·h.
   *
   * @param tip where that mass goes round
   * @param unbalanced_kg the mass
   */
  public double leastFoot_kg(Turning tip, double unbalanced_kg) {
    double weight = unbalanced_kg * Constants.GRAVITY_M_S2 * tip.radius_m();
    double pull = tip.pull_N(unbalanced_kg) * height_m;
    return Math.max(0, (weight + pull) / (Constants.GRAVITY_M_S2 * foot_m) - unbalanced_kg);
  }
}
