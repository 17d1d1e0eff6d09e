package faintwind.calibration.speed.state;

/**
 * One account of what happens to the ball: heater on or off, the loss walking with some strength.
 * It foretells each row and counts how likely the rows are under it. For one log and one thread.
 */
final class Hypothesis {
  private static final double CLIP2 = 50;

  private final HeatState state;
  private final Innovation innovation;
  private final double heatingShare;
  private final double walk2_1_s;
  private double logLikelihood;

  /**
   * An account that begins where another state stands.
   *
   * @param heatingShare 1 for a heater that is on, 0 for one that is off
   * @param walk2_1_s variance of the walk of ln(loss), per second
   */
  Hypothesis(FieldFormula formula, HeatState from, double heatingShare, double walk2_1_s) {
    state = new HeatState(formula);
    state.copyFrom(from);
    innovation = new Innovation(formula);
    this.heatingShare = heatingShare;
    this.walk2_1_s = walk2_1_s;
  }

  HeatState state() {
    return state;
  }

  /** Takes the next row in. */
  void step(PreparedRow row, double noise2) {
    state.advance(row.step_s(), heatingShare * row.supplied_K_s(), walk2_1_s, row.air());
    if (row.kind() == PreparedRow.Kind.SPIKE) {
      return;
    }
    innovation.foresee(state, row.signal(), noise2, row.air().air_K());
    logLikelihood += likelihood(innovation);
    innovation.correct(state);
  }

  /** Logarithm of the rows' density under this account, without its constant. */
  double logLikelihood() {
    return logLikelihood;
  }

  /** That of one reading; a wild one counts no more than a bad one. */
  static double likelihood(Innovation innovation) {
    double miss2 = innovation.miss() * innovation.miss() / innovation.variance();
    return -0.5 * (Math.log(innovation.variance()) + Math.min(CLIP2, miss2));
  }
}
