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
  private static final int KEPT = StepMatrix.KEPT;
  private static final int PER_ROW = N + 2 * KEPT + N + 6;
  private static final int COVARIANCE = N;
  private static final int TRANSITION = N + KEPT;
  private static final int GAIN = N + 2 * KEPT;
  private static final int REST = GAIN + N;
  private static final int SHOCK = REST + 3;
  private static final int RESTARTED = REST + 5;

  private double[] store = new double[0];
  private int rows;
  private final double[] lambda = new double[N];
  private final double[] bigLambda = new double[KEPT];

  public void clear() {
    rows = 0;
  }

  /** Notes the state after a row. */
  public void add(ForwardFilter filter) {
    int at = rows * PER_ROW;
    if (store.length < at + PER_ROW) {
      store = Arrays.copyOf(store, Math.max(2 * store.length, 1024 * PER_ROW));
    }
    HeatState state = filter.state();
    Innovation innovation = filter.innovation();
    System.arraycopy(state.mean(), 0, store, at, N);
    System.arraycopy(state.covariance(), 0, store, at + COVARIANCE, KEPT);
    if (filter.restarted()) {
      Arrays.fill(store, at + TRANSITION, at + PER_ROW, 0);
      store[at + REST + 1] = 1;
      store[at + RESTARTED] = 1;
    } else {
      System.arraycopy(state.transition(), 0, store, at + TRANSITION, KEPT);
      System.arraycopy(innovation.gain(), 0, store, at + GAIN, N);
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
    return store[row * PER_ROW + COVARIANCE + HeatState.RATIOS] / (ratio * ratio);
  }

  /** Means and variances of ln(loss) of all rows as they are now, to be kept. */
  public States states() {
    double[] kept = new double[rows * States.PER_ROW];
    for (int row = 0; row < rows; row++) {
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
  public void smooth() {
    Arrays.fill(lambda, 0);
    Arrays.fill(bigLambda, 0);
    for (int row = rows - 1; row >= 0; row--) {
      int at = row * PER_ROW;
      replace(at);
      backOverReading(at);
      store[at + SHOCK] = lambda[HeatState.RATIO];
      store[at + SHOCK + 1] = bigLambda[HeatState.RATIOS];
      if (store[at + RESTARTED] > 0) {
        Arrays.fill(lambda, 0);
        Arrays.fill(bigLambda, 0);
      } else {
        StepMatrix.backwards(store, at + TRANSITION, bigLambda, lambda);
      }
    }
  }

  /** x ← x − P λ, P(r,r) ← P(r,r) − P(r,·) Λ P(·,r). */
  private void replace(int at) {
    int c = at + COVARIANCE;
    double r0 = store[c + 3];
    double r1 = store[c + 6];
    double r2 = store[c + 8];
    double r3 = store[c + 9];
    double[] l = lambda;
    store[at] -= store[c] * l[0] + store[c + 1] * l[1] + store[c + 2] * l[2] + r0 * l[3];
    store[at + 1] -= store[c + 1] * l[0] + store[c + 4] * l[1] + store[c + 5] * l[2] + r1 * l[3];
    store[at + 2] -= store[c + 2] * l[0] + store[c + 5] * l[1] + store[c + 7] * l[2] + r2 * l[3];
    store[at + 3] -= r0 * l[0] + r1 * l[1] + r2 * l[2] + r3 * l[3];
    double[] b = bigLambda;
    double less =
        r0 * (b[0] * r0 + b[1] * r1 + b[2] * r2 + b[3] * r3)
            + r1 * (b[1] * r0 + b[4] * r1 + b[5] * r2 + b[6] * r3)
            + r2 * (b[2] * r0 + b[5] * r1 + b[7] * r2 + b[8] * r3)
            + r3 * (b[3] * r0 + b[6] * r1 + b[8] * r2 + b[9] * r3);
    store[c + HeatState.RATIOS] = Math.max(1e-12, r3 - less);
  }

  /** λ ← Cᵀ λ − Hᵀ ν / S, Λ ← Cᵀ Λ C + Hᵀ H / S with C = I − K H; H is of the bead only. */
  private void backOverReading(int at) {
    double sensitivity = store[at + REST + 2];
    double variance = store[at + REST + 1];
    double g0 = store[at + GAIN];
    double g1 = store[at + GAIN + 1];
    double g2 = store[at + GAIN + 2];
    double g3 = store[at + GAIN + 3];
    double dot = g0 * lambda[0] + g1 * lambda[1] + g2 * lambda[2] + g3 * lambda[3];
    lambda[HeatState.BEAD] -= sensitivity * (dot + store[at + REST] / variance);
    double[] b = bigLambda;
    double less0 = sensitivity * (b[0] * g0 + b[1] * g1 + b[2] * g2 + b[3] * g3);
    double less1 = sensitivity * (b[1] * g0 + b[4] * g1 + b[5] * g2 + b[6] * g3);
    double less2 = sensitivity * (b[2] * g0 + b[5] * g1 + b[7] * g2 + b[8] * g3);
    double less3 = sensitivity * (b[3] * g0 + b[6] * g1 + b[8] * g2 + b[9] * g3);
    double corner = g0 * less0 + g1 * less1 + g2 * less2 + g3 * less3;
    b[2] -= less0;
    b[5] -= less1;
    b[7] += sensitivity * (corner + sensitivity / variance) - 2 * less2;
    b[8] -= less3;
  }
}
