package faintwind.calibration.speed.state;

import java.util.List;
import java.util.function.Supplier;

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
   * Readable rows of a block and of the stretch beyond it.
   *
   * @param rows in order
   * @param core how many of them are the block's
   * @param noise2 variance of a reading, signal unit squared
   */
  public record Block(List<PreparedRow> rows, int core, double noise2) {}

  private final Trial weaker;
  private final Trial middle;
  private final Trial stronger;
  private boolean begun;
  private double log = LEAST_LOG;

  /** Tries strengths with filters of its own. */
  public WalkStrength(Supplier<ForwardFilter> filters) {
    weaker = new Trial(filters.get());
    middle = new Trial(filters.get());
    stronger = new Trial(filters.get());
  }

  /** The same again once sudden changes are known. */
  public double chooseAgain(Block block, ForwardFilter start, WindJumps jumps) {
    refine(block, start, jumps);
    return OwnChoices.GUSTS * Math.exp(2 * log);
  }

  /** Variance of the walk per second for a block that starts from a filter's state. */
  public double choose(Block block, ForwardFilter start) {
    if (!begun) {
      begun = true;
      double best = Double.NEGATIVE_INFINITY;
      for (double x = LEAST_LOG; x <= GREATEST_LOG + 1e-9; x += COARSE) {
        middle.begin(start, x);
        for (int row = 0; row < block.core(); row++) {
          middle.step(block.rows().get(row), block.noise2(), 0);
        }
        double likelihood = middle.likelihood();
        if (likelihood > best) {
          best = likelihood;
          log = x;
        }
      }
    }
    refine(block, start, new WindJumps());
    return OwnChoices.GUSTS * Math.exp(2 * log);
  }

  private void refine(Block block, ForwardFilter start, WindJumps jumps) {
    attempt(block, start, jumps);
    double low = weaker.likelihood();
    double high = stronger.likelihood();
    double bend = low - 2 * middle.likelihood() + high;
    double move = bend < 0 ? 0.5 * FINE * (low - high) / bend : high > low ? 2 * FINE : -2 * FINE;
    log += Math.max(-2 * FINE, Math.min(2 * FINE, move));
    log = Math.max(LEAST_LOG, Math.min(GREATEST_LOG, log));
  }

  /** Side by side: while one waits for its last number, a processor works on the next. */
  private void attempt(Block block, ForwardFilter start, WindJumps jumps) {
    weaker.begin(start, log - FINE);
    middle.begin(start, log);
    stronger.begin(start, log + FINE);
    double noise2 = block.noise2();
    for (int i = 0; i < block.core(); i++) {
      PreparedRow row = block.rows().get(i);
      double room = jumps.variance(i);
      weaker.step(row, noise2, room);
      middle.step(row, noise2, room);
      stronger.step(row, noise2, room);
    }
  }

  /** One strength of the walk on trial over a block: how likely its rows are under it. */
  private static final class Trial {
    private final ForwardFilter filter;
    private double walk2_1_s;
    private double sum;
    private double variances;

    Trial(ForwardFilter filter) {
      this.filter = filter;
    }

    /** Begins with a strength, by its logarithm, from a filter's state. */
    void begin(ForwardFilter start, double logStrength) {
      filter.copyFrom(start);
      walk2_1_s = Math.exp(2 * logStrength);
      sum = 0;
      variances = 1;
    }

    /** Takes the next row in, as {@link ForwardFilter#step}. */
    void step(PreparedRow row, double noise2, double jumpVariance) {
      filter.step(row, walk2_1_s, noise2, jumpVariance);
      if (filter.rowsSinceBegin() > SETTLING_ROWS && !filter.heaterIsOff()) {
        Innovation innovation = filter.innovation();
        double variance = innovation.variance();
        double miss2 = innovation.miss() * innovation.miss() / variance;
        sum += miss2 > CLIP2 ? CLIP2 : miss2;
        variances *= variance;
        if (variances < LEAST_PRODUCT || variances > 1 / LEAST_PRODUCT) {
          sum += Math.log(variances);
          variances = 1;
        }
      }
    }

    /** Logarithm of the rows' density, without its constant. */
    double likelihood() {
      return -0.5 * (sum + Math.log(variances));
    }
  }
}
