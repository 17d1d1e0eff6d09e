package faintwind.guide.turntable;

import faintwind.calibration.run.Series;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The readings so far: means of a second for good, the last rows as they came. Memory grows by two
 * numbers a second, whatever the logger's rate. Mutable; for one thread.
 */
final class SignalHistory {
  /** Rows kept as they came. */
  static final int ROWS = 128;

  private double[] binTime_s = new double[4096];
  private double[] binMean = new double[4096];
  private int bins;
  private int inBin;
  private final double[] rowTime_s = new double[ROWS];
  private final double[] rowValue = new double[ROWS];
  private long rows;
  private double sameSince_s;
  private long sameRows;
  private double resolution = Double.POSITIVE_INFINITY;

  void add(double time_s, double value) {
    double step = rows == 0 ? 1 : Math.abs(value - last());
    if (step > 0) {
      sameSince_s = time_s;
      sameRows = 0;
      resolution = rows == 0 ? resolution : Math.min(resolution, step);
    }
    sameRows++;
    rowTime_s[(int) (rows % ROWS)] = time_s;
    rowValue[(int) (rows % ROWS)] = value;
    rows++;
    if (bins > 0 && Math.floor(time_s) == Math.floor(binTime_s[bins - 1])) {
      inBin++;
      binMean[bins - 1] += (value - binMean[bins - 1]) / inBin;
      binTime_s[bins - 1] = time_s;
      return;
    }
    if (bins == binTime_s.length) {
      binTime_s = Arrays.copyOf(binTime_s, 2 * bins);
      binMean = Arrays.copyOf(binMean, 2 * bins);
    }
    binTime_s[bins] = time_s;
    binMean[bins] = value;
    bins++;
    inBin = 1;
  }

  boolean isEmpty() {
    return bins == 0;
  }

  double last_s() {
    return bins == 0 ? 0 : binTime_s[bins - 1];
  }

  double last() {
    return rowValue[(int) ((rows - 1) % ROWS)];
  }

  /** Mean of a stretch of time; empty where nothing was read in it. */
  OptionalDouble mean(double from_s, double to_s) {
    double sum = 0;
    int count = 0;
    for (int i = firstFrom(from_s); i < bins && binTime_s[i] <= to_s; i++) {
      sum += binMean[i];
      count++;
    }
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
  }

  /** About so many points of all, means of equal numbers of seconds. */
  Series thinned(int points) {
    int each = Math.max(1, (bins + points - 1) / points);
    int count = (bins + each - 1) / each;
    double[] times_s = new double[count];
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      int from = i * each;
      int to = Math.min(bins, from + each);
      times_s[i] = binTime_s[to - 1];
      for (int k = from; k < to; k++) {
        values[i] += binMean[k] / (to - from);
      }
    }
    return Series.of(times_s, values);
  }

  /** Straight line through a stretch of time. */
  SimpleRegression line(double from_s, double to_s) {
    SimpleRegression line = new SimpleRegression();
    for (int i = firstFrom(from_s); i < bins && binTime_s[i] <= to_s; i++) {
      line.addData(binTime_s[i], binMean[i]);
    }
    return line;
  }

  private int firstFrom(double from_s) {
    int found = Arrays.binarySearch(binTime_s, 0, bins, from_s);
    return found >= 0 ? found : -found - 1;
  }

  /** The last rows, oldest first; fewer at the beginning. */
  double[] lastRows(int wanted) {
    int count = (int) Math.min(Math.min(wanted, ROWS), rows);
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = rowValue[(int) ((rows - count + i) % ROWS)];
    }
    return values;
  }

  /** Usual time between the last rows, s. */
  double rowStep_s() {
    int count = (int) Math.min(ROWS, rows);
    if (count < 2) {
      return 1;
    }
    double first_s = rowTime_s[(int) ((rows - count) % ROWS)];
    return (rowTime_s[(int) ((rows - 1) % ROWS)] - first_s) / (count - 1);
  }

  /** How long the last rows have all had the very same value, s. */
  double unchanged_s() {
    return last_s() - sameSince_s;
  }

  /** How many rows that is. */
  long unchangedRows() {
    return sameRows;
  }

  /** The smallest step that the signal ever made; 0 before it made one. */
  double resolution() {
    return Double.isInfinite(resolution) ? 0 : resolution;
  }

  /** Standard deviation of single rows about their neighbours, from second differences. */
  double noise() {
    double[] last = lastRows(ROWS);
    if (last.length < 8) {
      return 0;
    }
    double squares = 0;
    for (int i = 2; i < last.length; i++) {
      double bend = last[i] - 2 * last[i - 1] + last[i - 2];
      squares += bend * bend;
    }
    return Math.sqrt(squares / (last.length - 2) / 6);
  }
}
