package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.squares.Optimum;
import java.util.function.Function;

/** A problem that remembers the point with the least sum of squares it was asked for. */
public final class BestSoFar implements Function<double[], Linearised> {
  private final RunProblem problem;
  private double[] point = new double[0];
  private Linearised at = new Linearised(new double[0], new double[0][0]);
  private double least = Double.POSITIVE_INFINITY;

  public BestSoFar(RunProblem problem) {
    this.problem = problem;
  }

  @Override
  public Linearised apply(double[] x) {
    Linearised here = problem.linearise(x);
    double norm = here.norm();
    if (norm < least) {
      least = norm;
      point = x.clone();
      at = here;
    }
    return here;
  }

  /** Whether any evaluation gave a number. */
  boolean hasPoint() {
    return least < Double.POSITIVE_INFINITY;
  }

  public Optimum optimum() {
    return Optimum.at(point, at);
  }
}
