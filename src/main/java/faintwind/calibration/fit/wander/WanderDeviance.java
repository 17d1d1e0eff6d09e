package faintwind.calibration.fit.wander;

import faintwind.calibration.fit.track.Track;

/**
 * −2 log likelihood of one track's residuals for many strengths of the wandering: what {@link
 * Whitening#deviance} says, in one pass over the rows and without keeping the filter. What does not
 * hang on the wandering is worked out once.
 */
public final class WanderDeviance {
  /** Logarithms are taken of products that stay between these. */
  private static final double SMALL = 1e-150;

  private static final double LARGE = 1e150;

  /** One of each strength that drives the loss. */
  private static final Wander REST = new Wander(1, 0, 0, 1);

  private static final Wander TURNING = new Wander(0, 1, 0, 1);
  private static final Wander DRAUGHT = new Wander(0, 0, 1, 1);

  private final double[] residuals;
  private final double[] keep;
  private final boolean[] leftOut;

  /** Variance that comes in at a row for each unit of a strength. */
  private final double[] byRest;

  private final double[] byTurning;
  private final double[] byDraught;
  private final double[] byWhite;

  public WanderDeviance(Track.Rows rows, Whitening.Course course, double[] residuals) {
    int n = rows.size();
    this.residuals = residuals;
    this.keep = Whitening.decays(rows, course);
    this.leftOut = rows.leftOut;
    byRest = new double[n];
    byTurning = new double[n];
    byDraught = new double[n];
    byWhite = new double[n];
    for (int i = 0; i < n; i++) {
      double fresh = rows.wildness[i] * (1 - keep[i] * keep[i]) / (2 * course.rate_1_s[i]);
      byRest[i] = fresh * course.drive(i, REST);
      byTurning[i] = fresh * course.drive(i, TURNING);
      byDraught[i] = fresh * course.drive(i, DRAUGHT);
      byWhite[i] = rows.sd[i] * rows.sd[i];
    }
  }

  public double of(Wander wander) {
    double white = wander.white() * wander.white();
    double variance = 0;
    double expected = 0;
    double sum = 0;
    double product = 1;
    for (int i = 0; i < residuals.length; i++) {
      double decay = keep[i];
      variance =
          variance * decay * decay
              + byRest[i] * wander.rest_s()
              + byTurning[i] * wander.turning_s()
              + byDraught[i] * wander.draught_m2_s();
      expected *= decay;
      if (leftOut[i]) {
        continue;
      }
      double total = variance + byWhite[i] * white;
      double gain = variance / total;
      double surprise = residuals[i] - expected;
      sum += surprise * surprise / total;
      expected += gain * surprise;
      variance *= 1 - gain;
      product *= total;
      if (!(product > SMALL && product < LARGE)) {
        sum += Math.log(product);
        product = 1;
      }
    }
    return sum + Math.log(product);
  }
}
