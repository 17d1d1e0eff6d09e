package faintwind.calibration.run;

import java.util.Arrays;

/**
 * One quantity against time, as recorded. Owns its arrays; immutable; thread-safe. Times strictly
 * increase; every value is finite: a row without a value is simply not in the series.
 */
public final class Series {
  private final double[] time_s;
  private final double[] value;

  private Series(double[] time_s, double[] value) {
    this.time_s = time_s;
    this.value = value;
  }

  /**
   * A series of copies of the two arrays.
   *
   * @throws IllegalArgumentException where lengths differ, time does not strictly increase, or a
   *     number is not finite
   */
  public static Series of(double[] time_s, double[] value) {
    if (time_s.length != value.length) {
      throw new IllegalArgumentException(
          "time_s has " + time_s.length + " numbers, value has " + value.length);
    }
    for (int i = 0; i < time_s.length; i++) {
      if (!Double.isFinite(time_s[i]) || !Double.isFinite(value[i])) {
        throw new IllegalArgumentException("not finite at index " + i);
      }
      if (i > 0 && time_s[i] <= time_s[i - 1]) {
        throw new IllegalArgumentException("time_s does not increase at index " + i);
      }
    }
    return new Series(time_s.clone(), value.clone());
  }

  public int size() {
    return time_s.length;
  }

  public boolean isEmpty() {
    return time_s.length == 0;
  }

  public double time_s(int index) {
    return time_s[index];
  }

  public double value(int index) {
    return value[index];
  }

  public double first_s() {
    return time_s[0];
  }

  public double last_s() {
    return time_s[time_s.length - 1];
  }

  /** A copy of the times, s. */
  public double[] times_s() {
    return time_s.clone();
  }

  /** A copy of the values. */
  public double[] values() {
    return value.clone();
  }

  /** The part with {@code from_s <= time <= to_s}; may be empty. */
  public Series window(double from_s, double to_s) {
    int start = indexAtOrAfter(from_s);
    int end = start;
    while (end < time_s.length && time_s[end] <= to_s) {
      end++;
    }
    return new Series(
        Arrays.copyOfRange(time_s, start, end), Arrays.copyOfRange(value, start, end));
  }

  /** Linear interpolation; beyond either end the end's value. The series must not be empty. */
  public double at(double t_s) {
    int right = indexAtOrAfter(t_s);
    if (right == 0) {
      return value[0];
    }
    if (right == time_s.length) {
      return value[value.length - 1];
    }
    double share = (t_s - time_s[right - 1]) / (time_s[right] - time_s[right - 1]);
    return value[right - 1] + share * (value[right] - value[right - 1]);
  }

  /** Arithmetic mean of the values; the series must not be empty. */
  public double mean() {
    return Arrays.stream(value).average().orElseThrow();
  }

  /** First index whose time is at or after {@code t_s}; {@link #size()} where there is none. */
  public int indexAtOrAfter(double t_s) {
    int found = Arrays.binarySearch(time_s, t_s);
    return found >= 0 ? found : -found - 1;
  }
}
