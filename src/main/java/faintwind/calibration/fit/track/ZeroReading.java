package faintwind.calibration.fit.track;

import faintwind.calibration.run.Series;
import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The chain's offset as one zero run shows it.
 *
 * @param run name of the run
 * @param signal mean signal
 * @param u its standard uncertainty, from the scatter of its parts and the resolution
 */
public record ZeroReading(String run, double signal, double u) {
  private static final int PARTS = 8;

  public static ZeroReading of(String run, Series signal, double least_u) {
    int n = signal.size();
    double mean = new Median().evaluate(signal.values());
    if (n < 2 * PARTS) {
      return new ZeroReading(run, signal.mean(), least_u);
    }
    double trimmed = 0;
    double[] parts = new double[PARTS];
    for (int k = 0; k < PARTS; k++) {
      double[] part = Arrays.copyOfRange(signal.values(), k * n / PARTS, (k + 1) * n / PARTS);
      double centre = new Median().evaluate(part);
      double sum = 0;
      int count = 0;
      double limit = 10 * least_u + 6 * Spikes.noise(signal);
      for (double value : part) {
        if (Math.abs(value - centre) <= limit) {
          sum += value;
          count++;
        }
      }
      parts[k] = count > 0 ? sum / count : centre;
      trimmed += parts[k] / PARTS;
    }
    double scatter = 0;
    for (double part : parts) {
      scatter += (part - trimmed) * (part - trimmed) / (PARTS - 1) / PARTS;
    }
    double value = Double.isFinite(trimmed) ? trimmed : mean;
    return new ZeroReading(run, value, Math.sqrt(scatter + least_u * least_u));
  }
}
