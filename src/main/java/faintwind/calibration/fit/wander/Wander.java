package faintwind.calibration.fit.wander;

/**
 * How strongly the loss itself wanders about the formula: draught at rest, unsteady turning and
 * draught in a spin, and whatever the formula does not know.
 *
 * @param rest_s power density of the relative loss at rest, s
 * @param turning_s power density of the relative speed while air moves past the ball, s
 * @param draught_m2_s power density of the draught that adds to that speed, m²/s
 * @param white factor on the standard deviation of single rows
 * @param memory_s time in which the draught is forgotten, s
 */
public record Wander(
    double rest_s, double turning_s, double draught_m2_s, double white, double memory_s) {
  /**
   * Eddies of some decimetres that pass at a centimetre or two a second last some tens of seconds
   * (own calculation).
   */
  public static final double MEMORY_S = 20;

  /** Before anything is known. */
  public static final Wander FIRST = new Wander(0.01, 0.01, 0.0005, 1, MEMORY_S);

  /** Standard deviation of the draught along the way, m/s. */
  public double draught_m_s() {
    return Math.sqrt(draught_m2_s / (2 * memory_s));
  }

  /** Power density of a draught of this standard deviation and memory. */
  static double strength_m2_s(double draught_m_s, double memory_s) {
    return 2 * memory_s * draught_m_s * draught_m_s;
  }

  public Wander withRest_s(double other) {
    return new Wander(other, turning_s, draught_m2_s, white, memory_s);
  }

  public Wander withTurning_s(double other) {
    return new Wander(rest_s, other, draught_m2_s, white, memory_s);
  }

  public Wander withDraught_m2_s(double other) {
    return new Wander(rest_s, turning_s, other, white, memory_s);
  }

  public Wander withWhite(double other) {
    return new Wander(rest_s, turning_s, draught_m2_s, other, memory_s);
  }

  public Wander withMemory_s(double other) {
    return new Wander(rest_s, turning_s, draught_m2_s, white, other);
  }
}
