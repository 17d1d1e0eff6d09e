package faintwind.calibration.fit.numerics;

import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** The list of unknowns of one fit; an index, once given, stays. */
public final class Unknowns {
  private final List<Unknown> list = new ArrayList<>();
  private Ties ties = Ties.NONE;

  /** Adds one and returns its index. */
  public int add(Unknown unknown) {
    list.add(unknown);
    return list.size() - 1;
  }

  public int size() {
    return list.size();
  }

  public Unknown get(int index) {
    return list.get(index);
  }

  /**
   * Puts another prior in the place of one; the values stay comparable through {@link #convert}.
   */
  public void replace(int index, Unknown unknown) {
    list.set(index, unknown);
  }

  /** Takes what others showed in the place of what is usual. */
  public void expect(ClassKnown others) {
    list.replaceAll(
        unknown ->
            Optional.ofNullable(others.expected().get(unknown.name()))
                .map(unknown::expecting)
                .orElse(unknown));
    ties = Ties.of(others, list);
  }

  /** What is known of them in pairs, as it counts in the sum of squares at x. */
  double tied(double[] x, double[] targets) {
    return ties.cost(list, x, targets);
  }

  /** Adds what is known of them in pairs to the normal equations at x. */
  void addTies(double[] x, double[] targets, double[][] normal, double[] right) {
    ties.add(list, x, targets, normal, right);
  }

  /** Covariance of what is believed of the first so many, where they are normal. */
  public double[][] believed(int size) {
    return ties.believed(list, size);
  }

  /** Values drawn from what is believed of all, about 0, in the fit's own variables. */
  public double[] drawn(SplittableRandom random) {
    return ties.drawn(list, random);
  }

  public double[] values(double[] x) {
    double[] values = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      values[i] = list.get(i).value(x[i]);
    }
    return values;
  }

  public double[] slopes(double[] x) {
    double[] slopes = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      slopes[i] = list.get(i).slope(x[i]);
    }
    return slopes;
  }

  /** The x of given values. */
  public double[] convert(double[] values) {
    double[] x = new double[values.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = list.get(i).x(values[i]);
    }
    return x;
  }
}
