package faintwind.calibration.speed;

import java.util.List;
import java.util.Optional;

/**
 * How strongly ln(loss) walks: the standard deviation per root second under which the innovations
 * of a block are likeliest (Schweppe 1965). For one log and one thread.
 */
final class WalkStrength {
  private static final double LEAST_LOG = Math.log(3e-4);
  private static final double GREATEST_LOG = Math.log(0.12);
  private static final double COARSE = (GREATEST_LOG - LEAST_LOG) / 5;
  private static final double FINE = 0.45;
  private static final double CLIP2 = 50;
  private static final int SETTLING_ROWS = 20;

  private final ForwardFilter scratch;
  private boolean begun;
  private double log = LEAST_LOG;

  WalkStrength(ForwardFilter scratch) {
    this.scratch = scratch;
  }

  /** Variance of the walk per second for a block that starts from a filter's state. */
  double choose(List<Optional<PreparedRow>> rows, int count, ForwardFilter start, double noise2) {
    if (!begun) {
      begun = true;
      double best = Double.NEGATIVE_INFINITY;
      for (double x = LEAST_LOG; x <= GREATEST_LOG + 1e-9; x += COARSE) {
        double likelihood = likelihood(rows, count, start, noise2, x);
        if (likelihood > best) {
          best = likelihood;
          log = x;
        }
      }
    }
    refine(rows, count, start, noise2);
    return Math.exp(2 * log);
  }

  private void refine(
      List<Optional<PreparedRow>> rows, int count, ForwardFilter start, double noise2) {
    double low = likelihood(rows, count, start, noise2, log - FINE);
    double middle = likelihood(rows, count, start, noise2, log);
    double high = likelihood(rows, count, start, noise2, log + FINE);
    double bend = low - 2 * middle + high;
    double move = bend < 0 ? 0.5 * FINE * (low - high) / bend : high > low ? 2 * FINE : -2 * FINE;
    log += Math.max(-2 * FINE, Math.min(2 * FINE, move));
    log = Math.max(LEAST_LOG, Math.min(GREATEST_LOG, log));
  }

  private double likelihood(
      List<Optional<PreparedRow>> rows,
      int count,
      ForwardFilter start,
      double noise2,
      double logStrength) {
    scratch.copyFrom(start);
    double walk2_1_s = Math.exp(2 * logStrength);
    double sum = 0;
    for (int i = 0; i < count; i++) {
      Optional<PreparedRow> row = rows.get(i);
      if (row.isEmpty()) {
        continue;
      }
      scratch.step(row.get(), walk2_1_s, noise2);
      if (scratch.rowsSinceBegin() > SETTLING_ROWS && !scratch.heaterIsOff()) {
        Innovation innovation = scratch.innovation();
        double miss2 = innovation.miss() * innovation.miss() / innovation.variance();
        sum -= 0.5 * (Math.log(innovation.variance()) + Math.min(CLIP2, miss2));
      }
    }
    return sum;
  }
}
