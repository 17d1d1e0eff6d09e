package faintwind.calibration.fit.numerics;

import java.util.function.Function;

/** A problem that remembers the point with the least sum of squares it was asked for. */
public final class BestSoFar implements Function<double[], Optimiser.Linearised> {
  private final RunProblem problem;
  private double[] point = new double[0];
  private Optimiser.Linearised at = new Optimiser.Linearised(new double[0], new double[0][0]);
  private double least = Double.POSITIVE_INFINITY;

  public BestSoFar(RunProblem problem) {
    this.problem = problem;
  }

  @Override
  public Optimiser.Linearised apply(double[] x) {
    Optimiser.Linearised here = problem.linearise(x);
    double norm = here.norm();
    if (norm < least) {
      least = norm;
      point = x.clone();
      at = here;
    }
    return here;
  }

  public Optimiser.Optimum optimum() {
    return Optimiser.Optimum.at(point, at);
  }
}
