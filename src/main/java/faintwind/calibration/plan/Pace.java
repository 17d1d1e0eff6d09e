package faintwind.calibration.plan;

/**
 * How long things last in a session.
 *
 * @param constants time constants that the arm turns at each speed
 * @param rest_s recorded rest after each stop, s
 * @param warmUp_s warm-up from switching the heater on, s
 */
record Pace(double constants, double rest_s, double warmUp_s) {
  /** Heater off before anything, s. */
  static final double ZERO_S = 600;

  /** Still air at the end, s. */
  static final double STILL_S = 420;

  /** Taking the balls to another radius, s. */
  static final double MOVE_S = 120;

  /** Left alone after that, recorded, before the arm turns, s. */
  static final double SETTLE_S = 180;

  /** The rest after a stop that a fit needs to see the carried air, s. */
  static final double LEAST_REST_S = 120;

  /** The same with another warm-up. */
  Pace withWarmUp(double other_s) {
    return new Pace(constants, rest_s, other_s);
  }
}
