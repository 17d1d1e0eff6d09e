package faintwind.calibration.fit.numerics;

import java.util.function.Function;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;

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
    double sum = 0;
    for (double residual : here.residuals) {
      sum += residual * residual;
    }
    if (sum < least) {
      least = sum;
      point = x.clone();
      at = here;
    }
    return here;
  }

  public Optimiser.Optimum optimum() {
    return new Optimiser.Optimum(
        point, Math.sqrt(least), new Array2DRowRealMatrix(at.jacobian), at.residuals.length);
  }
}
