package faintwind.calibration.speed.state;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Noise of a row from the rows themselves: the median absolute second difference (a robust form of
 * Gasser, Sroka and Jennen-Steinmetz 1986), and the logger's least step. Where the air moves faster
 * than the rows, the calibration's own noise bounds it.
 */
public record NoiseLevel(double variance, double hidden) {
  static final double MEDIAN_TO_DEVIATION = 1.4826;
  static final double TRUST = 2;
  static final double LEAST_SHARE = 2e-6;
  static final int FEWEST = 12;
  private static final double COARSE_SHARE = 0.25;

  /**
   * The noise of some rows.
   *
   * @param rows rows of a block, those that could be read
   * @param calibrated noise of a row in the calibration, signal unit
   * @param stillSignal signal in still air, for the least noise that is reckoned with
   */
  public static NoiseLevel of(List<PreparedRow> rows, double calibrated, double stillSignal) {
    double least = LEAST_SHARE * Math.abs(stillSignal);
    int count = rows.size();
    double[] signal = new double[count];
    double[] step = new double[count];
    for (int i = 0; i < count; i++) {
      PreparedRow row = rows.get(i);
      signal[i] = row.signal();
      step[i] = row.step_s();
    }
    if (count < FEWEST) {
      return new NoiseLevel(Math.max(least * least, calibrated * calibrated), 0);
    }
    double deviation = deviation(signal, step, count);
    double bounded = calibrated > 0 ? Math.min(deviation, TRUST * calibrated) : deviation;
    double resolution = resolution(signal, count);
    double variance = Math.max(least * least, bounded * bounded + resolution * resolution / 12);
    return new NoiseLevel(variance, hidden(deviation, resolution));
  }

  /** Whether the step outweighs the noise, so that neighbouring rows err alike. */
  public boolean coarse() {
    return hidden * hidden > COARSE_SHARE * variance;
  }

  /**
   * What a logger's step leaves between a reading and the truth, however many rows are averaged:
   * the first harmonic of the rounding, Δ/π · exp(−2π² σ²/Δ²), by its root mean square (theory of
   * dither; Widrow 1956). Noise of a third of a step takes nearly all of it away.
   */
  private static double hidden(double deviation, double resolution) {
    if (resolution <= 0) {
      return 0;
    }
    double share = deviation / resolution;
    return resolution / (Math.PI * Math.sqrt(2)) * Math.exp(-2 * Math.PI * Math.PI * share * share);
  }

  private static double deviation(double[] signal, double[] step, int count) {
    double[] differences = new double[count];
    int found = 0;
    for (int i = 1; i + 1 < count; i++) {
      if (Math.abs(step[i] - step[i + 1]) < 0.2 * step[i + 1]) {
        differences[found++] = Math.abs(signal[i] - (signal[i - 1] + signal[i + 1]) / 2);
      }
    }
    if (found == 0) {
      return 0;
    }
    double median = new Median().evaluate(differences, 0, found);
    return MEDIAN_TO_DEVIATION * median / Math.sqrt(1.5);
  }

  private static double resolution(double[] signal, int count) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < count; i++) {
      double difference = Math.abs(signal[i] - signal[i - 1]);
      if (difference > 1e-9 * Math.abs(signal[i]) && difference < least) {
        least = difference;
      }
    }
    return least == Double.MAX_VALUE ? 0 : least;
  }
}
