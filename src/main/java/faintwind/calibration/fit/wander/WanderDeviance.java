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

  /** One of each strength that drives the loss as white noise. */
  private static final Wander REST = new Wander(1, 0, 0, 1, Wander.MEMORY_S);

  private static final Wander TURNING = new Wander(0, 1, 0, 1, Wander.MEMORY_S);

  private final Track.Rows rows;
  private final Whitening.Course course;
  private final double[] residuals;
  private final double[] keep;

  /** Variance that comes in at a row for each unit of a strength. */
  private final double[] byRest;

  private final double[] byTurning;

  /** Change of the signal's rate with a draught at a row. */
  private final double[] byDraught;

  public WanderDeviance(Track.Rows rows, Whitening.Course course, double[] residuals) {
    int n = rows.size();
    this.rows = rows;
    this.course = course;
    this.residuals = residuals;
    this.keep = Whitening.decays(rows, course);
    byRest = new double[n];
    byTurning = new double[n];
    byDraught = new double[n];
    for (int i = 0; i < n; i++) {
      double fresh = rows.wildness[i] * (1 - keep[i] * keep[i]) / (2 * course.rate_1_s[i]);
      byRest[i] = fresh * course.drive(i, REST);
      byTurning[i] = fresh * course.drive(i, TURNING);
      byDraught[i] = course.byDraught_1_m[i] * Math.sqrt(rows.wildness[i]);
    }
  }

  public double of(Wander wander) {
    DraughtWalk walk = new DraughtWalk(wander);
    double white = wander.white() * wander.white();
    double expected = 0;
    double draught = 0;
    double sum = 0;
    double product = 1;
    for (int i = 0; i < residuals.length; i++) {
      step(walk, i, byRest[i] * wander.rest_s() + byTurning[i] * wander.turning_s());
      expected = keep[i] * expected + walk.pushes * draught;
      draught *= walk.stays;
      if (rows.leftOut[i]) {
        continue;
      }
      double total = walk.signal + rows.sd[i] * rows.sd[i] * white;
      double surprise = residuals[i] - expected;
      sum += surprise * surprise / total;
      expected += walk.signal / total * surprise;
      draught += walk.both / total * surprise;
      walk.seen(total);
      product *= total;
      if (!(product > SMALL && product < LARGE)) {
        sum += Math.log(product);
        product = 1;
      }
    }
    return sum + Math.log(product);
  }

  private void step(DraughtWalk walk, int i, double white) {
    if (i > 0 && course.moved[i] != course.moved[i - 1]) {
      walk.meetAnother();
    }
    walk.step(Whitening.since(rows, i), course.rate_1_s[i], keep[i], byDraught[i], white);
  }
}
