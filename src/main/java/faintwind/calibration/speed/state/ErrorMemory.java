package faintwind.calibration.speed.state;

import faintwind.calibration.response.QuickCurve;

/**
 * How long an estimator's error of ln(loss) stays the same, and so what an average leaves of it.
 * The loss walks at random with variance q a second and is seen through the integral of the heat
 * balance in white noise. The stationary Kalman filter of that pair has the poles a (−1 ± i), and
 * the error has the autocorrelation exp(−aτ) cos aτ with a = q/variance; smoothed both ways it is
 * exp(−aτ) (cos aτ − sin aτ) with a = q/(4 variance) (own derivation from the stationary Riccati
 * equation and the Wiener smoother).
 */
public enum ErrorMemory {
  SMOOTHED(4) {
    @Override
    double left(double x) {
      return (1 - Math.exp(-x) * (Math.sin(x) + Math.cos(x))) / (x * x);
    }
  },
  FILTERED(1) {
    @Override
    double left(double x) {
      return (x - Math.exp(-x) * Math.sin(x)) / (x * x);
    }
  };

  private static final double LEAST_S = 1e-3;
  private static final double SHORT = 1e-2;

  private final double times;

  ErrorMemory(double times) {
    this.times = times;
  }

  /**
   * 1/a, s.
   *
   * @param variance of ln(loss)
   * @param walk2_1_s variance of its walk, per second
   */
  public double memory_s(double variance, double walk2_1_s) {
    return times * variance / walk2_1_s;
  }

  /** Share of the variance that is left in an average, by its time over the memory. */
  public QuickCurve curve() {
    return new QuickCurve(this::left);
  }

  /** Share of the variance that is left in an average over a time, by such a curve. */
  public static double left(QuickCurve curve, double average_s, double memory_s) {
    double x = average_s / Math.max(LEAST_S, memory_s);
    return x < SHORT ? 1 : curve.at(x);
  }

  abstract double left(double x);
}
