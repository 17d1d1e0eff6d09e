package faintwind.calibration.fit.squares;

import java.util.function.Function;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * The search of Levenberg and Marquardt as MINPACK's lmder does it (Moré 1978), for problems that
 * come as a triangle R and residuals y: lmder's own decomposition of every Jacobian falls away, and
 * all runs along rows. Steps stay within a bound in scaled variables; {@link BoundedStep} finds
 * them.
 */
final class LevenbergMarquardt {
  private static final double FIRST_BOUND = 100;
  private static final double LEAST_RATIO = 1e-4;
  private static final double POOR = 0.25;
  private static final double GOOD = 0.75;
  private static final double LEAST_SHRINK = 0.1;

  /** A promise that is kept more than this many times over does not tell of a least. */
  private static final double MOST_KEPT = 2;

  private final Function<double[], Linearised> function;
  private final int mostEvaluations;
  private final double tolerance;

  private int evaluations = 1;
  private double[] x;
  private Linearised at;
  private Triangle triangle;
  private double cost;
  private double[] scale;
  private double bound;
  private double damping;
  private boolean settled;

  LevenbergMarquardt(
      Function<double[], Linearised> function,
      int mostEvaluations,
      double tolerance,
      double[] start) {
    this.function = function;
    this.mostEvaluations = mostEvaluations;
    this.tolerance = tolerance;
    x = start.clone();
    at = function.apply(x);
    triangle = Triangle.of(at);
    cost = at.norm();
    scale = triangle.columnNorms();
    for (int j = 0; j < scale.length; j++) {
      scale[j] = scale[j] == 0 ? 1 : scale[j];
    }
    double size = scaled(x);
    bound = size == 0 ? FIRST_BOUND : FIRST_BOUND * size;
  }

  Optimum search() {
    boolean first = true;
    while (!settled && !isFlat()) {
      double[] norms = triangle.columnNorms();
      for (int j = 0; j < norms.length; j++) {
        scale[j] = Math.max(scale[j], norms[j]);
      }
      boolean went = false;
      while (!went && !settled) {
        went = step(first);
      }
      first = false;
    }
    return Optimum.at(x, at);
  }

  /** Whether the residuals are at right angles to every column. */
  private boolean isFlat() {
    double[] norms = triangle.columnNorms();
    double[] gradient = triangle.gradient();
    double most = 0;
    for (int j = 0; j < norms.length && cost != 0; j++) {
      if (norms[j] != 0) {
        most = Math.max(most, Math.abs(gradient[j]) / (norms[j] * cost));
      }
    }
    return most <= tolerance;
  }

  /** Tries a step; whether it was taken. */
  private boolean step(boolean first) {
    BoundedStep step = BoundedStep.of(triangle, scale, bound, damping);
    damping = step.damping;
    double[] next = x.clone();
    for (int j = 0; j < next.length; j++) {
      next[j] -= step.back[j];
    }
    double length = scaled(step.back);
    bound = first ? Math.min(bound, length) : bound;
    if (++evaluations > mostEvaluations) {
      throw new TooManyEvaluationsException(mostEvaluations);
    }
    Linearised there = function.apply(next);
    double newCost = there.norm();
    double kept = newCost / cost;
    double reduction = 0.1 * newCost < cost ? 1 - kept * kept : -1;
    double straight = triangle.square(step.back) / (cost * cost);
    double damped = damping * length * length / (cost * cost);
    double promised = straight + 2 * damped;
    double ratio = promised == 0 ? 0 : reduction / promised;
    adapt(ratio, reduction, -(straight + damped), length, 0.1 * newCost >= cost);
    boolean taken = ratio >= LEAST_RATIO;
    if (taken) {
      x = next;
      at = there;
      triangle = Triangle.of(there);
      cost = newCost;
    }
    boolean little =
        Math.abs(reduction) <= tolerance && promised <= tolerance && ratio <= MOST_KEPT;
    settled = little || bound <= tolerance * scaled(x);
    return taken;
  }

  private void adapt(double ratio, double reduction, double slope, double length, boolean wild) {
    if (ratio <= POOR) {
      double by = reduction < 0 ? 0.5 * slope / (slope + 0.5 * reduction) : 0.5;
      by = wild || by < LEAST_SHRINK ? LEAST_SHRINK : by;
      bound = by * Math.min(bound, 10 * length);
      damping /= by;
    } else if (damping == 0 || ratio >= GOOD) {
      bound = 2 * length;
      damping *= 0.5;
    }
  }

  private double scaled(double[] step) {
    double sum = 0;
    for (int j = 0; j < step.length; j++) {
      double part = scale[j] * step[j];
      sum += part * part;
    }
    return Math.sqrt(sum);
  }
}
