package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Periodogram of what is left of a signal when a straight line is taken off: P_k = (2 dt / n) |Σ
 * x_j e^(−2πijk/n)|², one-sided, in signal² per hertz (Schuster 1898; any textbook of time series).
 * Only the longest part whose number of rows is a power of two is used.
 */
final class Spectrum {
  private static final int LEAST_ROWS = 32;

  private final double step_s;
  private final double[] density;

  private Spectrum(double step_s, double[] density) {
    this.step_s = step_s;
    this.density = density;
  }

  /**
   * The spectrum of residuals.
   *
   * @param residual values whose mean is near 0, evenly sampled after interpolation
   * @throws IllegalArgumentException where there are fewer than 32 rows
   */
  static Spectrum of(Series residual) {
    if (residual.size() < LEAST_ROWS) {
      throw new IllegalArgumentException(
          "rows = " + residual.size() + ", allowed from " + LEAST_ROWS);
    }
    double step_s = step_s(residual);
    int rows = (int) Math.floor((residual.last_s() - residual.first_s()) / step_s) + 1;
    int n = Math.max(LEAST_ROWS, Integer.highestOneBit(Math.min(rows, residual.size())));
    double[] even = new double[n];
    for (int i = 0; i < n; i++) {
      even[i] = residual.at(residual.first_s() + i * step_s);
    }
    Complex[] transform =
        new FastFourierTransformer(DftNormalization.STANDARD)
            .transform(even, TransformType.FORWARD);
    double[] density = new double[n / 2 - 1];
    for (int k = 1; k < n / 2; k++) {
      double size = transform[k].abs();
      density[k - 1] = 2 * step_s / n * size * size;
    }
    return new Spectrum(step_s, density);
  }

  /** Median distance of two rows, s. */
  static double step_s(Series series) {
    double[] steps = new double[series.size() - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = series.time_s(i + 1) - series.time_s(i);
    }
    return new Median().evaluate(steps);
  }

  int size() {
    return density.length;
  }

  double density(int index) {
    return density[index];
  }

  /** Frequency of a line, Hz. */
  double frequency_Hz(int index) {
    return (index + 1) * resolution_Hz();
  }

  /** Distance of two lines, Hz. */
  double resolution_Hz() {
    return 1 / (step_s * 2 * (density.length + 1));
  }

  /** Rows a second. */
  double rate_Hz() {
    return 1 / step_s;
  }
}
