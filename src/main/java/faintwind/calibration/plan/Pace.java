package faintwind.calibration.plan;

/**
 * How long things last in a session.
 *
 * @param constants time constants that the arm turns at each speed
 * @param rest_s recorded rest after each stop, s
 * @param warmUp_s warm-up from switching the heater on, s
 */
record Pace(double constants, double rest_s, double warmUp_s) {
  /** The same with another warm-up. */
  Pace withWarmUp(double other_s) {
    return new Pace(constants, rest_s, other_s);
  }
}
