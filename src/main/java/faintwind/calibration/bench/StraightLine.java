package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight line of least squares through a series.
 *
 * @param at_0 its value at time 0
 * @param slope_per_s its slope
 * @param scatter standard deviation about it, with two degrees of freedom taken off
 */
record StraightLine(double at_0, double slope_per_s, double scatter) {

  /** The line; the series must have three rows or more. */
  static StraightLine through(Series series) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < series.size(); i++) {
      line.addData(series.time_s(i), series.value(i));
    }
    return new StraightLine(
        line.getIntercept(),
        line.getSlope(),
        Math.sqrt(Math.max(0, line.getSumSquaredErrors()) / (series.size() - 2)));
  }

  /** What is left of a series without it. */
  Series residual(Series series) {
    double[] left = new double[series.size()];
    for (int i = 0; i < left.length; i++) {
      left[i] = series.value(i) - at_0 - slope_per_s * series.time_s(i);
    }
    return Series.of(series.times_s(), left);
  }
}
