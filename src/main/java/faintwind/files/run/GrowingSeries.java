package faintwind.files.run;

import faintwind.calibration.run.Series;
import java.util.Arrays;

/** Two columns of numbers that grow row by row and become a {@link Series}. */
final class GrowingSeries {
  private double[] time_s = new double[256];
  private double[] value = new double[256];
  private int size;

  void add(double t_s, double v) {
    if (size == value.length) {
      time_s = Arrays.copyOf(time_s, size * 2);
      value = Arrays.copyOf(value, size * 2);
    }
    time_s[size] = t_s;
    value[size] = v;
    size++;
  }

  boolean isEmpty() {
    return size == 0;
  }

  Series toSeries() {
    return Series.of(Arrays.copyOf(time_s, size), Arrays.copyOf(value, size));
  }
}
