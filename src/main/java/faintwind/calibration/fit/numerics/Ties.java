package faintwind.calibration.fit.numerics;

import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is known of unknowns in pairs, before the runs: it joins the least squares beside the prior
 * of each unknown alone. All is counted where the unknowns are normal, so that it stays the same
 * while one of them is held by another prior.
 */
final class Ties {
  /** Nothing is known of any two at once. */
  static final Ties NONE = new Ties(List.of(), List.of());

  private static final double SINGULAR = 1e-300;

  /** Relative asymmetry that rounding leaves, and the least pivot. */
  private static final double ROUNDING = 1e-9;

  private static final double LEAST = 1e-300;

  private final List<Unknown> expected;
  private final List<Tie> ties;

  /** The same as {@link ClassKnown.Tie}, by index. */
  private record Tie(int one, int other, double information) {
    double times() {
      return one == other ? 1 : 2;
    }
  }

  private Ties(List<Unknown> expected, List<Tie> ties) {
    this.expected = List.copyOf(expected);
    this.ties = List.copyOf(ties);
  }

  /** The ties between these, as the others expect them. */
  static Ties of(ClassKnown others, List<Unknown> expected) {
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < expected.size(); i++) {
      index.put(expected.get(i).name(), i);
    }
    List<Tie> ties = new ArrayList<>();
    for (ClassKnown.Tie tie : others.ties()) {
      Integer one = index.get(tie.one());
      Integer other = index.get(tie.other());
      if (one != null && other != null) {
        ties.add(new Tie(one, other, tie.information()));
      }
    }
    return new Ties(expected, ties);
  }

  /** How far each unknown lies off what was expected of it, where it is normal. */
  private double[] off(List<Unknown> unknowns, double[] x, double[] targets) {
    double[] off = new double[expected.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = unknowns.get(i).normal(x[i]) - expected.get(i).normal(targets[i]);
    }
    return off;
  }

  /** What they add to the sum of squares at x, the priors' centres at these targets. */
  double cost(List<Unknown> unknowns, double[] x, double[] targets) {
    if (ties.isEmpty()) {
      return 0;
    }
    double[] off = off(unknowns, x, targets);
    double sum = 0;
    for (Tie tie : ties) {
      sum += tie.times() * tie.information() * off[tie.one()] * off[tie.other()];
    }
    return sum;
  }

  /** Adds them to the normal equations at x. */
  void add(
      List<Unknown> unknowns, double[] x, double[] targets, double[][] normal, double[] right) {
    if (ties.isEmpty()) {
      return;
    }
    double[] off = off(unknowns, x, targets);
    for (Tie tie : ties) {
      int i = tie.one();
      int j = tie.other();
      double one = unknowns.get(i).spread();
      double other = unknowns.get(j).spread();
      normal[i][j] += tie.information() * one * other;
      right[i] += tie.information() * one * off[j];
      if (i != j) {
        normal[j][i] = normal[i][j];
        right[j] += tie.information() * other * off[i];
      }
    }
  }

  /** Covariance of what is believed of the first so many unknowns, where they are normal. */
  double[][] believed(List<Unknown> unknowns, int size) {
    RealMatrix information = new Array2DRowRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      double spread = unknowns.get(i).spread();
      information.addToEntry(i, i, 1 / (spread * spread));
    }
    for (Tie tie : ties) {
      information.addToEntry(tie.one(), tie.other(), tie.information());
      if (tie.one() != tie.other()) {
        information.addToEntry(tie.other(), tie.one(), tie.information());
      }
    }
    return new LUDecomposition(information, SINGULAR).getSolver().getInverse().getData();
  }

  /** Values drawn from what is believed of all unknowns, about 0, in the fit's own variables. */
  double[] drawn(List<Unknown> unknowns, SplittableRandom random) {
    double[] drawn = new double[unknowns.size()];
    for (int i = 0; i < drawn.length; i++) {
      drawn[i] = random.nextGaussian();
    }
    if (ties.isEmpty()) {
      return drawn;
    }
    int size = expected.size();
    RealMatrix unit = new Array2DRowRealMatrix(believed(unknowns, size), false);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        unit.multiplyEntry(i, j, 1 / unknowns.get(i).spread() / unknowns.get(j).spread());
      }
    }
    double[] tied =
        new CholeskyDecomposition(unit, ROUNDING, LEAST).getL().operate(Arrays.copyOf(drawn, size));
    System.arraycopy(tied, 0, drawn, 0, size);
    return drawn;
  }
}
