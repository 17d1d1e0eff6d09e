package faintwind.calibration.fit.track;

import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Single rows that lie far from their neighbours, found by comparing each with the median of the
 * seven around it (Hampel's identifier; common practice, no source).
 */
public final class Spikes {
  private static final int REACH = 3;
  private static final double LIMIT = 8;

  private Spikes() {}

  /** Indices of the rows that are spikes. */
  public static List<Integer> in(Series series, double noise) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < series.size(); i++) {
      int from = Math.max(0, i - REACH);
      int to = Math.min(series.size(), i + REACH + 1);
      if (to - from < 2 * REACH) {
        continue;
      }
      double[] around = new double[to - from];
      for (int j = from; j < to; j++) {
        around[j - from] = series.value(j);
      }
      double centre = new Median().evaluate(around);
      double[] away = new double[around.length];
      for (int j = 0; j < away.length; j++) {
        away[j] = Math.abs(around[j] - centre);
      }
      double scale = Math.max(1.4826 * new Median().evaluate(away), noise);
      if (Math.abs(series.value(i) - centre) > LIMIT * scale) {
        found.add(i);
      }
    }
    return found;
  }

  /** Standard deviation of single rows about their neighbours, from second differences. */
  public static double noise(Series series) {
    int n = series.size() - 2;
    if (n < 3) {
      return 0;
    }
    double[] second = new double[n];
    for (int i = 0; i < n; i++) {
      second[i] = Math.abs(series.value(i) - 2 * series.value(i + 1) + series.value(i + 2));
    }
    double robust = 1.4826 * new Median().evaluate(second) / Math.sqrt(6);
    if (robust > 0) {
      return robust;
    }
    return Math.sqrt(Arrays.stream(second).map(s -> s * s).sum() / n / 6);
  }
}
