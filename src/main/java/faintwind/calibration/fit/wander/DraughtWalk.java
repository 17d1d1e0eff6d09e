package faintwind.calibration.fit.wander;

/**
 * Variances of a residual and of the draught that drives it, from row to row: da/dt = −a/memory +
 * noise (Uhlenbeck and Ornstein 1930, from memory), de/dt = −λ e + by · a + white noise, both exact
 * over a step. A draught that were white at every time scale would seem weaker over minutes than it
 * is, because the rows show it over seconds.
 */
final class DraughtWalk {
  /** Rates that differ by less, relative, count as differing by this much. */
  private static final double ALIKE = 1e-5;

  private final double forgets_1_s;
  private final double power_m2_s3;
  private final double usual_m2_s2;

  /** Variance of the residual, its covariance with the draught, variance of the draught. */
  double signal;

  double both;
  private double draught;

  /** What the draught leaves of itself over the last step, and what it adds to the residual. */
  double stays;

  double pushes;

  private boolean another;

  DraughtWalk(Wander wander) {
    forgets_1_s = 1 / wander.memory_s();
    power_m2_s3 = wander.draught_m2_s() * forgets_1_s * forgets_1_s;
    usual_m2_s2 = wander.draught_m2_s() * forgets_1_s / 2;
    draught = usual_m2_s2;
  }

  /** The arm comes to rest or starts: nothing known of the draught till now holds on. */
  void meetAnother() {
    another = true;
    both = 0;
    draught = usual_m2_s2;
  }

  /**
   * Goes on by a step.
   *
   * @param h length, s
   * @param rate the ball's own, 1/s
   * @param keep what the step leaves of the residual
   * @param by change of the signal's rate with the draught
   * @param white variance that white noise adds
   */
  void step(double h, double rate, double keep, double by, double white) {
    if (Math.abs(rate - forgets_1_s) < ALIKE * forgets_1_s) {
      double other = (1 + 2 * ALIKE) * forgets_1_s;
      step(h, other, Math.exp(-other * h), by, white);
      return;
    }
    double stay = Math.exp(-forgets_1_s * h);
    double apart = rate - forgets_1_s;
    double push = by * (stay - keep) / apart;
    double own = (1 - stay * stay) / (2 * forgets_1_s);
    double crossed = (1 - stay * keep) / (forgets_1_s + rate);
    double left = (1 - keep * keep) / (2 * rate);
    double times = by / apart;
    signal =
        keep * keep * signal
            + 2 * keep * push * both
            + push * push * draught
            + power_m2_s3 * times * times * Math.max(0, own - 2 * crossed + left)
            + white;
    both = stay * (keep * both + push * draught) + power_m2_s3 * times * (own - crossed);
    draught = stay * stay * draught + power_m2_s3 * own;
    stays = another ? 0 : stay;
    pushes = another ? 0 : push;
    another = false;
  }

  /** A row was seen whose variance before was this. */
  void seen(double total) {
    draught -= both * both / total;
    both *= 1 - signal / total;
    signal *= 1 - signal / total;
  }
}
