package faintwind.calibration.fit.health;

import java.util.Arrays;

/**
 * The slope of a straight line through readings, as an average of the rates between them: the
 * middle counts most. Whatever is compared with such a slope has to be averaged alike, or the bend
 * of a curve counts as a difference.
 */
final class SlopeWeights {
  private final double[] away_s;
  private final double[] mean;
  private final double squares_s2;
  private final double density_1_s;

  /** Weights at these times, s, in rising order. */
  SlopeWeights(double[] time_s) {
    int n = time_s.length;
    double centre_s = Arrays.stream(time_s).average().orElse(0);
    away_s = Arrays.stream(time_s).map(t -> t - centre_s).toArray();
    squares_s2 = Arrays.stream(away_s).map(away -> away * away).sum();
    mean = new double[n];
    double tail_s = 0;
    double density = 0;
    for (int i = n - 1; i > 0; i--) {
      tail_s += away_s[i];
      double step_s = time_s[i] - time_s[i - 1];
      double weight = tail_s / squares_s2;
      mean[i] += 0.5 * step_s * weight;
      mean[i - 1] += 0.5 * step_s * weight;
      density += step_s * weight * weight;
    }
    density_1_s = density;
  }

  /** Slope of the line through these values, per second. */
  double slope(double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += away_s[i] * values[i];
    }
    return sum / squares_s2;
  }

  /** Mean of these rates, each weighted as the slope takes it. */
  double mean(double[] rates) {
    double sum = 0;
    for (int i = 0; i < rates.length; i++) {
      sum += mean[i] * rates[i];
    }
    return sum;
  }

  /** Standard deviation of the slope for readings that scatter by this. */
  double ofNoise(double sd) {
    return sd / Math.sqrt(squares_s2);
  }

  /** Variance of the mean of white noise of power density 1, 1/s; 1.2 over the whole time. */
  double density_1_s() {
    return density_1_s;
  }
}
