package faintwind.calibration.fit.wander;

/**
 * How strongly the loss itself wanders about the formula: draught at rest, unsteady turning and
 * draught in a spin, and whatever the formula does not know.
 *
 * @param rest_s power density of the relative loss at rest, s
 * @param turning_s power density of the relative speed while air moves past the ball, s
 * @param draught_m2_s power density of the draught that adds to that speed, m²/s
 * @param white factor on the standard deviation of single rows
 */
public record Wander(double rest_s, double turning_s, double draught_m2_s, double white) {
  /** Before anything is known. */
  public static final Wander FIRST = new Wander(0.01, 0.01, 0.0005, 1);
}
