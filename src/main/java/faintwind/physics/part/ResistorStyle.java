package faintwind.physics.part;

import faintwind.physics.Interval;

/**
 * A make of resistor, without its value.
 *
 * @param label id, name, source
 * @param body size of its body
 * @param rating_W rated power, W
 * @param derating how the rating falls with temperature
 * @param tempco_1_K temperature coefficient, 1/K
 */
public record ResistorStyle(
    Label label, Body body, double rating_W, Derating derating, Interval tempco_1_K) {

  /**
   * Size of the body.
   *
   * @param diameter_m its diameter, m, or the diagonal of its cross-section for a chip
   * @param length_m its length, m
   * @param lead_m diameter of its leads, m; 0 for a chip
   */
  public record Body(Interval diameter_m, double length_m, double lead_m) {}

  /**
   * Full rating up to one temperature, falling in a straight line to nothing at another.
   *
   * @param full_K full rating up to here, K
   * @param none_K no rating from here, K
   */
  public record Derating(double full_K, double none_K) {
    /** Share of the rating that is left, 0 to 1, where the body stands in this temperature, K. */
    public double share(double surroundings_K) {
      return Math.max(0, Math.min(1, (none_K - surroundings_K) / (none_K - full_K)));
    }
  }

  /**
   * Power that may be put in, W. Inside a metal ball the surroundings are the ball, so its
   * temperature takes the place of the air's (common practice, no source).
   *
   * @param surroundings_K temperature around the body, K
   */
  public double allowed_W(double surroundings_K) {
    return rating_W * derating.share(surroundings_K);
  }

  /** The same at an altitude: 10 % less for each 10 000 ft above 5000 ft (MIL-R-39017, note). */
  public double allowed_W(double surroundings_K, double altitude_m) {
    double above = Math.max(0, altitude_m - 1524) / 3048;
    return allowed_W(surroundings_K) * Math.max(0, 1 - 0.10 * above);
  }
}
