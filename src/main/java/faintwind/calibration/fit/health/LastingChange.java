package faintwind.calibration.fit.health;

import java.util.List;
import java.util.Optional;

/**
 * A lasting change in a series of numbers, one a run in the order they were made: two levels
 * explain them all.
 *
 * @param from index of the first number after the change
 * @param size later level less earlier one
 */
public record LastingChange(int from, double size) {

  /**
   * The change that leaves the least scatter, where it is sure.
   *
   * @param rests heat at rest, one a run, in order
   * @param turnings heat while turning of the same runs, where they turned
   * @param least smallest change that counts
   */
  public static Optional<LastingChange> in(
      double[] rests, List<Optional<MeanHeat>> turnings, double least) {
    double best = Double.POSITIVE_INFINITY;
    Optional<LastingChange> found = Optional.empty();
    for (int k = 2; k + 2 <= rests.length; k++) {
      double squares = squares(rests, 0, k) + squares(rests, k, rests.length);
      double within = Math.sqrt(squares / Math.max(1, rests.length - 2));
      double size = mean(rests, k, rests.length) - mean(rests, 0, k);
      double u =
          Math.max(within, OwnChoices.LEAST_SCATTER)
              * Math.sqrt(1.0 / k + 1.0 / (rests.length - k));
      boolean sure = Math.abs(size) > Math.max(least, OwnChoices.STEP_SURE * u);
      if (sure
          && Math.abs(size) > 3 * within
          && within < best
          && !sparesTheTurning(new MeanHeat(size, u), turnings, k)) {
        best = within;
        found = Optional.of(new LastingChange(k, size));
      }
    }
    return found;
  }

  /**
   * Whether the turning speaks against the change: a ball that was fouled, or another supply, shows
   * while turning as well; a draught shows at rest alone. Compared is what either explains, by the
   * sum of squared standardised deviations.
   */
  private static boolean sparesTheTurning(
      MeanHeat rest, List<Optional<MeanHeat>> turnings, int from) {
    Optional<MeanHeat> before = of(turnings.subList(0, from));
    Optional<MeanHeat> after = of(turnings.subList(from, turnings.size()));
    if (before.isEmpty() || after.isEmpty()) {
      return false;
    }
    double size = after.get().ratio() - before.get().ratio();
    double u = Math.hypot(before.get().u(), after.get().u());
    double apart = rest.ratio() - size;
    double byBall = apart * apart / (rest.u() * rest.u() + u * u);
    return byBall - size * size / (u * u) > OwnChoices.SPEAKS_AGAINST;
  }

  private static Optional<MeanHeat> of(List<Optional<MeanHeat>> turnings) {
    return MeanHeat.of(turnings.stream().flatMap(Optional::stream).toList());
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
