package faintwind.calibration.fit.numerics;

import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.squares.Optimiser;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The least squares near a point that is known already, by steps of Gauss and Newton. The valley of
 * a fit is narrow and bent: a whole step leaves it, and the next comes back to its bottom far
 * ahead, where steps that must not climb (Levenberg and Marquardt) creep along it. From a few
 * deviations off, three linearisations are enough; where they are not, the search by {@link
 * Optimiser} has to do it. Steps that keep less than they promise are halved, as corners of a ramp
 * make them swing.
 */
public final class GaussNewton {
  private static final int MOST_STEPS = 12;

  /** The first steps are whole, whatever they keep. */
  private static final int WHOLE = 2;

  /** The step that promises less than this of the sum of squares is the last. */
  private static final double LAST = 0.5;

  private static final double LEAST_SHARE = 0.25;
  private static final double KEPT_LITTLE = 0.25;
  private static final double KEPT_MUCH = 0.7;

  private final RunProblem problem;
  private final double[] x;
  private double share = 1;

  private GaussNewton(RunProblem problem, double[] start) {
    this.problem = problem;
    this.x = start.clone();
  }

  /**
   * The point of least squares; nothing where the steps do not settle, or settle higher.
   *
   * @param first the problem linearised at the start
   * @param problem the problem
   * @param start where to begin
   * @param cancelled asked before every step
   */
  public static Optional<double[]> from(
      Linearised first, RunProblem problem, double[] start, BooleanSupplier cancelled) {
    return new GaussNewton(problem, start).settled(first, cancelled);
  }

  private Optional<double[]> settled(Linearised first, BooleanSupplier cancelled) {
    double highest = square(first.residuals, 0);
    double before = highest;
    double promised = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      if (cancelled.getAsBoolean()) {
        throw new Cancelled();
      }
      Linearised at = step == 0 ? first : problem.linearise(x);
      double cost = square(at.residuals, 0);
      double left = square(at.residuals, x.length);
      if (!(cost < RunProblem.WILD)) {
        return Optional.empty();
      }
      if (cost - left < LAST) {
        share = 1;
        advance(at);
        return cost <= highest ? Optional.of(x) : Optional.empty();
      }
      if (step >= WHOLE) {
        adapt((before - cost) / promised);
      }
      advance(at);
      before = cost;
      promised = (cost - left) * share * (2 - share);
    }
    return Optional.empty();
  }

  private void adapt(double kept) {
    if (kept < KEPT_LITTLE) {
      share = Math.max(LEAST_SHARE, share / 2);
    } else if (kept > KEPT_MUCH) {
      share = Math.min(1, share * 2);
    }
  }

  private static double square(double[] residuals, int from) {
    double sum = 0;
    for (int i = from; i < residuals.length; i++) {
      sum += residuals[i] * residuals[i];
    }
    return sum;
  }

  /** One step: solves R step = −residuals, R the triangle of {@link RunProblem#linearise}. */
  private void advance(Linearised at) {
    double[] step = new double[x.length];
    for (int i = x.length - 1; i >= 0; i--) {
      double sum = -at.residuals[i];
      for (int j = i + 1; j < x.length; j++) {
        sum -= at.jacobian[i][j] * step[j];
      }
      step[i] = sum / at.jacobian[i][i];
    }
    for (int i = 0; i < x.length; i++) {
      x[i] = problem.unknowns().get(i).stepped(x[i], share * step[i]);
    }
  }
}
