package faintwind.calibration.fit.health;

import java.util.Optional;

/**
 * A lasting change in a series of numbers, one a run in the order they were made: two levels
 * explain them all.
 *
 * @param from index of the first number after the change
 * @param size later level less earlier one
 */
public record Step(int from, double size) {

  /**
   * The change that leaves the least scatter, where it is sure.
   *
   * @param values one a run, in order
   * @param least smallest change that counts
   */
  public static Optional<Step> in(double[] values, double least) {
    double best = Double.POSITIVE_INFINITY;
    Optional<Step> found = Optional.empty();
    for (int k = 2; k + 2 <= values.length; k++) {
      double before = mean(values, 0, k);
      double after = mean(values, k, values.length);
      double squares = squares(values, 0, k) + squares(values, k, values.length);
      double within = Math.sqrt(squares / Math.max(1, values.length - 2));
      double size = after - before;
      double u =
          Math.max(within, HealthLimits.LEAST_SCATTER)
              * Math.sqrt(1.0 / k + 1.0 / (values.length - k));
      boolean sure = Math.abs(size) > Math.max(least, HealthLimits.STEP_SURE * u);
      if (sure && Math.abs(size) > 3 * within && within < best) {
        best = within;
        found = Optional.of(new Step(k, size));
      }
    }
    return found;
  }

  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum / (to - from);
  }

  private static double squares(double[] values, int from, int to) {
    double centre = mean(values, from, to);
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += (values[i] - centre) * (values[i] - centre);
    }
    return sum;
  }
}
