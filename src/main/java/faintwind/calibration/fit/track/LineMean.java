package faintwind.calibration.fit.track;

import faintwind.calibration.run.Series;

/** Mean of the straight lines between recorded rows. */
final class LineMean {
  private LineMean() {}

  /**
   * Mean between two times of (value/scale)^(1 + power), the ends of each line counting equally.
   *
   * @param power 0 for the value itself, 1 for its square
   */
  static double of(Series series, double from_s, double to_s, int power, double scale) {
    if (to_s <= from_s) {
      return term(series.at(from_s) / scale, power);
    }
    double sum = 0;
    double t = from_s;
    while (t < to_s) {
      int next = series.indexAtOrAfter(t + 1e-9);
      double end = next < series.size() ? Math.min(series.time_s(next), to_s) : to_s;
      sum +=
          (end - t) * (term(series.at(t) / scale, power) + term(series.at(end) / scale, power)) / 2;
      t = end;
    }
    return sum / (to_s - from_s);
  }

  private static double term(double ratio, int power) {
    return power == 0 ? ratio : ratio * ratio;
  }
}
