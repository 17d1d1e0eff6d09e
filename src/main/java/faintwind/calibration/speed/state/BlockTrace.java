package faintwind.calibration.speed.state;

import java.util.Arrays;

/**
 * What the forward filter left at each row of a block, and the smoothing over it backwards by the
 * modified Bryson–Frazier recursion (Bierman 1973): no matrix is inverted. Reused from block to
 * block; for one thread.
 */
public final class BlockTrace {
  private static final int N = HeatState.SIZE;
  private static final double LEAST_RATIO = 0.3;
  private static final int KEPT = StateStep.KEPT;
  private static final int PER_ROW = N + 2 * KEPT + N + 6;
  private static final int COVARIANCE = N;
  private static final int TRANSITION = N + KEPT;
  private static final int GAIN = N + 2 * KEPT;
  private static final int REST = GAIN + N;
  private static final int SHOCK = REST + 3;
  private static final int RESTARTED = REST + 5;

  private double[] store = new double[0];
  private int rows;
  private final BackwardSums after = new BackwardSums();

  void clear() {
    rows = 0;
  }

  /** Notes the state after a row. */
  void add(ForwardFilter filter) {
    int at = rows * PER_ROW;
    if (store.length < at + PER_ROW) {
      store = Arrays.copyOf(store, Math.max(2 * store.length, 1024 * PER_ROW));
    }
    HeatState state = filter.state();
    Innovation innovation = filter.innovation();
    state.store(store, at);
    if (filter.restarted()) {
      Arrays.fill(store, at + TRANSITION, at + PER_ROW, 0);
      store[at + REST + 1] = 1;
      store[at + RESTARTED] = 1;
    } else {
      store[at + GAIN] = innovation.gain0();
      store[at + GAIN + 1] = innovation.gain1();
      store[at + GAIN + 2] = innovation.gain2();
      store[at + GAIN + 3] = innovation.gain3();
      store[at + REST] = innovation.miss();
      store[at + REST + 1] = innovation.variance();
      store[at + REST + 2] = innovation.sensitivity();
      store[at + RESTARTED] = 0;
    }
    rows++;
  }

  /** Filtered mean of a state at a row; smoothed after {@link #smooth}. */
  public double mean(int row, int quantity) {
    return store[row * PER_ROW + quantity];
  }

  /** Filtered variance of ln(loss) at a row; smoothed after {@link #smooth}. */
  public double logLossVariance(int row) {
    double ratio = Math.max(LEAST_RATIO, mean(row, HeatState.RATIO));
    return store[row * PER_ROW + COVARIANCE + StateCovariance.RATIOS] / (ratio * ratio);
  }

  /** Means and variances of ln(loss) of the first rows as they are now, to be kept. */
  States states(int count) {
    double[] kept = new double[count * States.PER_ROW];
    for (int row = 0; row < count; row++) {
      System.arraycopy(store, row * PER_ROW, kept, row * States.PER_ROW, N);
      kept[row * States.PER_ROW + N] = logLossVariance(row);
    }
    return new States(kept);
  }

  /** States of the rows of a block. */
  public static final class States {
    private static final int PER_ROW = N + 1;

    private final double[] kept;

    private States(double[] kept) {
      this.kept = kept;
    }

    /** The variance of ln(loss) at a row, whose mean state the array receives. */
    public double at(int row, double[] mean) {
      System.arraycopy(kept, row * PER_ROW, mean, 0, N);
      return kept[row * PER_ROW + N];
    }
  }

  /**
   * How many standard deviations a sudden change of the loss ratio just before a row would stand
   * out, by the readings after it and those before (auxiliary residual; de Jong and Penzer 1998).
   */
  double shockScore(int row) {
    int at = row * PER_ROW + SHOCK;
    return store[at + 1] > 0 ? Math.abs(store[at]) / Math.sqrt(store[at + 1]) : 0;
  }

  /** Whether {@link #shockScore} lies above a number. */
  boolean shocks(int row, double score) {
    int at = row * PER_ROW + SHOCK;
    return store[at] * store[at] > score * score * store[at + 1] && store[at + 1] > 0;
  }

  /** The change of the loss ratio that is likeliest there. */
  double shock(int row) {
    int at = row * PER_ROW + SHOCK;
    return store[at + 1] > 0 ? -store[at] / store[at + 1] : 0;
  }

  /** Replaces filtered by smoothed means and the variance of the loss, from the last row back. */
  void smooth() {
    after.clear();
    for (int row = rows - 1; row >= 0; row--) {
      int at = row * PER_ROW;
      replace(at);
      double weight = 1 / store[at + REST + 1];
      double missShare = store[at + REST] * weight;
      after.overReading(store, at + GAIN, store[at + REST + 2], missShare, weight);
      store[at + SHOCK] = after.l3;
      store[at + SHOCK + 1] = after.b9;
      if (store[at + RESTARTED] > 0) {
        after.clear();
      } else {
        after.overStep(store, at + TRANSITION);
      }
    }
  }

  /** x ← x − P λ, P(r,r) ← P(r,r) − P(r,·) Λ P(·,r). */
  private void replace(int at) {
    int c = at + COVARIANCE;
    double p1 = store[c + 1];
    double p2 = store[c + 2];
    double r0 = store[c + 3];
    double p5 = store[c + 5];
    double r1 = store[c + 6];
    double r2 = store[c + 8];
    double r3 = store[c + StateCovariance.RATIOS];
    store[at] -= after.change(store[c], p1, p2, r0);
    store[at + 1] -= after.change(p1, store[c + 4], p5, r1);
    store[at + 2] -= after.change(p2, p5, store[c + 7], r2);
    store[at + 3] -= after.change(r0, r1, r2, r3);
    store[c + StateCovariance.RATIOS] = Math.max(1e-12, r3 - after.less(r0, r1, r2, r3));
  }
}
