package faintwind.calibration;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Values of a quantity drawn by Monte Carlo, with the estimate, standard uncertainty and coverage
 * intervals that JCGM 101:2008 takes from them (7.6 and 7.7). Immutable.
 */
public final class Draws {
  private final double[] sorted;

  private Draws(double[] sorted) {
    this.sorted = sorted;
  }

  /**
   * The draws of these values.
   *
   * @throws IllegalArgumentException where there are fewer than two
   */
  public static Draws of(double[] values) {
    if (values.length < 2) {
      throw new IllegalArgumentException("values = " + values.length + ", allowed from 2");
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Draws(sorted);
  }

  /**
   * Draws of a model: propagation of distributions (JCGM 101:2008, 5.3).
   *
   * @param trials number of trials
   * @param seed of the random numbers
   * @param model one value of the output from freshly drawn inputs
   */
  public static Draws propagate(int trials, long seed, ToDoubleFunction<SplittableRandom> model) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] values = new double[trials];
    for (int i = 0; i < trials; i++) {
      values[i] = model.applyAsDouble(random);
    }
    return of(values);
  }

  public int size() {
    return sorted.length;
  }

  /** Estimate: the mean (7.6, equation 16). */
  public double mean() {
    return StatUtils.mean(sorted);
  }

  /** Standard uncertainty: the standard deviation (7.6, equation 17). */
  public double u() {
    return Math.sqrt(StatUtils.variance(sorted));
  }

  /** Ends of the probabilistically symmetric interval of that coverage (7.7.2). */
  public double[] symmetric(double coverage) {
    int inside = inside(coverage);
    int low = (sorted.length - inside) / 2;
    return new double[] {sorted[low], sorted[Math.min(low + inside, sorted.length - 1)]};
  }

  /** Ends of the shortest interval of that coverage (7.7.4). */
  public double[] shortest(double coverage) {
    int inside = inside(coverage);
    int best = 0;
    for (int low = 0; low + inside < sorted.length; low++) {
      if (sorted[low + inside] - sorted[low] < sorted[best + inside] - sorted[best]) {
        best = low;
      }
    }
    return new double[] {sorted[best], sorted[best + inside]};
  }

  private int inside(double coverage) {
    return Math.min(sorted.length - 1, (int) Math.round(coverage * sorted.length));
  }
}
