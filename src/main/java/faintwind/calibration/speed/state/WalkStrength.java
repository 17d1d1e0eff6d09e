package faintwind.calibration.speed.state;

import java.util.List;

/**
 * How strongly ln(loss) walks: the standard deviation per root second under which the innovations
 * of a block are likeliest (Schweppe 1965). For one log and one thread.
 */
public final class WalkStrength {
  private static final double LEAST_LOG = Math.log(3e-4);
  private static final double GREATEST_LOG = Math.log(0.12);
  private static final double COARSE = (GREATEST_LOG - LEAST_LOG) / 5;
  private static final double FINE = 0.45;
  private static final double CLIP2 = 50;
  private static final int SETTLING_ROWS = 20;

  /**
   * One logarithm is taken of many variances' product, before it runs out of what a number holds.
   */
  private static final double LEAST_PRODUCT = 1e-200;

  /**
   * Gusts forget themselves within some seconds, a random walk does not: the walk that is likeliest
   * over a block is weaker than the gusts are quick, and its bands too narrow. Twice its variance
   * holds in simulated gusts (own choice).
   */
  private static final double GUSTS = 2;

  /**
   * Readable rows of a block and of the stretch beyond it.
   *
   * @param rows in order
   * @param core how many of them are the block's
   * @param noise2 variance of a reading, signal unit squared
   */
  public record Block(List<PreparedRow> rows, int core, double noise2) {}

  private final ForwardFilter scratch;
  private boolean begun;
  private double log = LEAST_LOG;

  public WalkStrength(ForwardFilter scratch) {
    this.scratch = scratch;
  }

  /** The same again once sudden changes are known. */
  public double chooseAgain(Block block, ForwardFilter start, WindJumps jumps) {
    refine(block, start, jumps);
    return GUSTS * Math.exp(2 * log);
  }

  /** Variance of the walk per second for a block that starts from a filter's state. */
  public double choose(Block block, ForwardFilter start) {
    WindJumps none = new WindJumps();
    if (!begun) {
      begun = true;
      double best = Double.NEGATIVE_INFINITY;
      for (double x = LEAST_LOG; x <= GREATEST_LOG + 1e-9; x += COARSE) {
        double likelihood = likelihood(block, start, none, x);
        if (likelihood > best) {
          best = likelihood;
          log = x;
        }
      }
    }
    refine(block, start, none);
    return GUSTS * Math.exp(2 * log);
  }

  private void refine(Block block, ForwardFilter start, WindJumps jumps) {
    double low = likelihood(block, start, jumps, log - FINE);
    double middle = likelihood(block, start, jumps, log);
    double high = likelihood(block, start, jumps, log + FINE);
    double bend = low - 2 * middle + high;
    double move = bend < 0 ? 0.5 * FINE * (low - high) / bend : high > low ? 2 * FINE : -2 * FINE;
    log += Math.max(-2 * FINE, Math.min(2 * FINE, move));
    log = Math.max(LEAST_LOG, Math.min(GREATEST_LOG, log));
  }

  private double likelihood(Block block, ForwardFilter start, WindJumps jumps, double logStrength) {
    scratch.copyFrom(start);
    double walk2_1_s = Math.exp(2 * logStrength);
    double sum = 0;
    double variances = 1;
    for (int i = 0; i < block.core(); i++) {
      double room = jumps.variance(i);
      scratch.step(block.rows().get(i), walk2_1_s, block.noise2(), room);
      if (scratch.rowsSinceBegin() > SETTLING_ROWS && !scratch.heaterIsOff()) {
        Innovation innovation = scratch.innovation();
        double miss2 = innovation.miss() * innovation.miss() / innovation.variance();
        sum += Math.min(CLIP2, miss2);
        variances *= innovation.variance();
        if (variances < LEAST_PRODUCT || variances > 1 / LEAST_PRODUCT) {
          sum += Math.log(variances);
          variances = 1;
        }
      }
    }
    return -0.5 * (sum + Math.log(variances));
  }
}
