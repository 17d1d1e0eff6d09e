package faintwind.calibration.fit.numerics;

import faintwind.calibration.Cancelled;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;

/**
 * Nonlinear least squares by Levenberg and Marquardt (Commons Math, after MINPACK's lmder), for
 * every fit of this program. Checked against the certified data sets of NIST StRD.
 */
public final class Optimiser {
  private static final double TOLERANCE = 1e-10;

  /** Residuals and their Jacobian at one point. */
  public static final class Linearised {
    final double[] residuals;
    public final double[][] jacobian;

    /** Takes the arrays over without copying. */
    public Linearised(double[] residuals, double[][] jacobian) {
      this.residuals = residuals;
      this.jacobian = jacobian;
    }
  }

  /** Where the sum of squares is least. */
  public static final class Optimum {
    private final double[] point;
    private final double cost;
    private final RealMatrix jacobian;
    private final int residuals;
    private final Optional<Given> given;

    /** A variance that a variable was given, other than its curvature says. */
    private record Given(int variable, double variance) {}

    Optimum(double[] point, double cost, RealMatrix jacobian, int residuals) {
      this(point, cost, jacobian, residuals, Optional.empty());
    }

    private Optimum(
        double[] point, double cost, RealMatrix jacobian, int residuals, Optional<Given> given) {
      this.point = point;
      this.cost = cost;
      this.jacobian = jacobian;
      this.residuals = residuals;
      this.given = given;
    }

    /** A point near the least, settled on by other means. */
    public static Optimum at(double[] point, Linearised there) {
      double cost = new ArrayRealVector(there.residuals, false).getNorm();
      RealMatrix jacobian = new Array2DRowRealMatrix(there.jacobian, false);
      return new Optimum(point, cost, jacobian, there.residuals.length);
    }

    /**
     * The same with another variance of one variable than the curvature says; the others move with
     * it as the curvature says.
     */
    public Optimum withVariance(int variable, double unitVariance) {
      return new Optimum(
          point, cost, jacobian, residuals, Optional.of(new Given(variable, unitVariance)));
    }

    public double[] point() {
      return point.clone();
    }

    /** Sum of squared residuals. */
    public double sumOfSquares() {
      return cost * cost;
    }

    /** Residual standard deviation, n − p degrees of freedom. */
    public double residualDeviation() {
      return Math.sqrt(sumOfSquares() / (residuals - point.length));
    }

    /**
     * Inverse of JᵀJ: the covariance where the residuals have unit variance; times the squared
     * residual deviation where their variance is taken from the fit. By QR of the Jacobian with its
     * columns scaled to unit length.
     */
    public double[][] unitCovariance() {
      double[][] covariance = curvatureCovariance();
      given.ifPresent(g -> widen(covariance, g));
      return covariance;
    }

    /** The same without any other variance that was given to a variable. */
    public double[][] curvatureCovariance() {
      int p = point.length;
      double[] scale = new double[p];
      RealMatrix scaled = jacobian.copy();
      for (int j = 0; j < p; j++) {
        double norm = jacobian.getColumnVector(j).getNorm();
        scale[j] = norm > 0 ? norm : 1;
        scaled.setColumnVector(j, jacobian.getColumnVector(j).mapDivide(scale[j]));
      }
      RealMatrix r = new QRDecomposition(scaled).getR().getSubMatrix(0, p - 1, 0, p - 1);
      RealMatrix inverse =
          new QRDecomposition(r).getSolver().solve(MatrixUtils.createRealIdentityMatrix(p));
      RealMatrix product = inverse.multiply(inverse.transpose());
      double[][] covariance = product.getData();
      for (int i = 0; i < p; i++) {
        for (int j = 0; j < p; j++) {
          covariance[i][j] /= scale[i] * scale[j];
        }
      }
      return covariance;
    }

    /**
     * One standard deviation of what a variable was given beyond its curvature, and how all others
     * move with it; zeros where nothing was.
     */
    public double[] beyondCurvature() {
      if (given.isEmpty()) {
        return new double[point.length];
      }
      int variable = given.get().variable();
      double[] along = curvatureCovariance()[variable];
      double old = along[variable];
      double factor = Math.sqrt(Math.max(0, given.get().variance() - old)) / old;
      for (int i = 0; i < along.length; i++) {
        along[i] *= factor;
      }
      return along;
    }

    /** C + (v − c) C e (C e)ᵀ / c², c the old variance and v the new one (Sherman and Morrison). */
    private static void widen(double[][] covariance, Given given) {
      double[] with = covariance[given.variable()].clone();
      double old = with[given.variable()];
      double factor = (given.variance() - old) / (old * old);
      for (int i = 0; i < with.length; i++) {
        for (int j = 0; j < with.length; j++) {
          covariance[i][j] += factor * with[i] * with[j];
        }
      }
    }
  }

  private final int mostEvaluations;
  private final double tolerance;

  /** The usual limits. */
  public Optimiser() {
    this(400, TOLERANCE);
  }

  /** Other limits: the most evaluations, and the relative change at which to stop. */
  public Optimiser(int mostEvaluations, double tolerance) {
    this.mostEvaluations = mostEvaluations;
    this.tolerance = tolerance;
  }

  /**
   * The least squares from a start.
   *
   * @param function residuals and Jacobian at a point
   * @param start first point
   * @param cancelled asked before every evaluation
   * @throws Cancelled where {@code cancelled} says so
   * @throws MathIllegalStateException where no minimum is found within the limit
   */
  public Optimum minimise(
      Function<double[], Linearised> function, double[] start, BooleanSupplier cancelled) {
    Linearised first = function.apply(start);
    int residuals = first.residuals.length;
    MultivariateJacobianFunction model =
        point -> {
          if (cancelled.getAsBoolean()) {
            throw new Cancelled();
          }
          double[] x = point.toArray();
          Linearised at = Arrays.equals(x, start) ? first : function.apply(x);
          return new Pair<>(
              new ArrayRealVector(at.residuals, false),
              new Array2DRowRealMatrix(at.jacobian, false));
        };
    LeastSquaresOptimizer.Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(tolerance)
            .withParameterRelativeTolerance(tolerance)
            .withOrthoTolerance(tolerance)
            .optimize(
                new LeastSquaresBuilder()
                    .model(model)
                    .target(new double[residuals])
                    .start(start)
                    .lazyEvaluation(false)
                    .maxEvaluations(mostEvaluations)
                    .maxIterations(mostEvaluations)
                    .build());
    return new Optimum(
        optimum.getPoint().toArray(), optimum.getCost(), optimum.getJacobian(), residuals);
  }
}
