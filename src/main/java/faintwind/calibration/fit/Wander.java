package faintwind.calibration.fit;

/**
 * How strongly the loss itself wanders about the formula: draught at rest, unsteady turning in a
 * spin, and whatever the formula does not know.
 *
 * @param rest_s power density of the relative loss at rest, s
 * @param moved_s the same while air moves past the ball, s
 * @param white factor on the standard deviation of single rows
 */
record Wander(double rest_s, double moved_s, double white) {
  /** Before anything is known. */
  static final Wander FIRST = new Wander(0.01, 0.01, 1);
}
