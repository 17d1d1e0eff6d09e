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
  private static final int PER_ROW = N + 2 * N * N + N + 5;
  private static final int COVARIANCE = N;
  private static final int TRANSITION = N + N * N;
  private static final int GAIN = N + 2 * N * N;
  private static final int REST = GAIN + N;
  private static final int SHOCK = REST + 3;

  private double[] store = new double[0];
  private int rows;
  private final double[] lambda = new double[N];
  private final double[] bigLambda = new double[N * N];
  private final double[] keep = new double[N * N];
  private final double[] left = new double[N * N];

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
    System.arraycopy(state.covariance(), 0, store, at + COVARIANCE, N * N);
    if (filter.restarted()) {
      Arrays.fill(store, at + TRANSITION, at + PER_ROW, 0);
      store[at + REST + 1] = 1;
    } else {
      System.arraycopy(state.transition(), 0, store, at + TRANSITION, N * N);
      System.arraycopy(innovation.gain(), 0, store, at + GAIN, N);
      store[at + REST] = innovation.miss();
      store[at + REST + 1] = innovation.variance();
      store[at + REST + 2] = innovation.sensitivity();
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
    return store[row * PER_ROW + COVARIANCE + N * N - 1] / (ratio * ratio);
  }

  /**
   * How many standard deviations a sudden change of the loss ratio just before a row would stand
   * out, by the readings after it and those before (auxiliary residual; de Jong and Penzer 1998).
   */
  double shockScore(int row) {
    int at = row * PER_ROW + SHOCK;
    return store[at + 1] > 0 ? Math.abs(store[at]) / Math.sqrt(store[at + 1]) : 0;
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
      store[at + SHOCK + 1] = bigLambda[N * N - 1];
      backOverStep(at);
    }
  }

  /** x ← x − P λ, P(r,r) ← P(r,r) − P(r,·) Λ P(·,r). */
  private void replace(int at) {
    int c = at + COVARIANCE;
    int last = c + N * (N - 1);
    double less = 0;
    for (int i = 0; i < N; i++) {
      double sum = 0;
      for (int j = 0; j < N; j++) {
        sum += bigLambda[i * N + j] * store[last + j];
      }
      less += store[last + i] * sum;
    }
    for (int i = 0; i < N; i++) {
      double sum = 0;
      for (int j = 0; j < N; j++) {
        sum += store[c + i * N + j] * lambda[j];
      }
      store[at + i] -= sum;
    }
    store[c + N * N - 1] = Math.max(1e-12, store[c + N * N - 1] - less);
  }

  /** λ ← Cᵀ λ − Hᵀ ν / S, Λ ← Cᵀ Λ C + Hᵀ H / S with C = I − K H; H is of the bead only. */
  private void backOverReading(int at) {
    double sensitivity = store[at + REST + 2];
    double variance = store[at + REST + 1];
    double dot = 0;
    for (int i = 0; i < N; i++) {
      dot += store[at + GAIN + i] * lambda[i];
    }
    lambda[HeatState.BEAD] -= sensitivity * dot + sensitivity * store[at + REST] / variance;
    for (int i = 0; i < N; i++) {
      double sum = 0;
      for (int j = 0; j < N; j++) {
        sum += bigLambda[i * N + j] * store[at + GAIN + j];
      }
      keep[i] = sum * sensitivity;
    }
    double corner = 0;
    for (int i = 0; i < N; i++) {
      corner += store[at + GAIN + i] * keep[i];
    }
    int b = HeatState.BEAD;
    for (int i = 0; i < N; i++) {
      bigLambda[i * N + b] -= keep[i];
      bigLambda[b * N + i] -= keep[i];
    }
    bigLambda[b * N + b] += sensitivity * corner + sensitivity * sensitivity / variance;
  }

  /** λ ← Φᵀ λ, Λ ← Φᵀ Λ Φ. */
  private void backOverStep(int at) {
    int t = at + TRANSITION;
    for (int j = 0; j < N; j++) {
      double sum = 0;
      for (int i = 0; i < N; i++) {
        sum += store[t + i * N + j] * lambda[i];
      }
      keep[j] = sum;
    }
    System.arraycopy(keep, 0, lambda, 0, N);
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
          sum += store[t + k * N + i] * bigLambda[k * N + j];
        }
        left[i * N + j] = sum;
      }
    }
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
          sum += left[i * N + k] * store[t + k * N + j];
        }
        bigLambda[i * N + j] = sum;
      }
    }
  }
}
