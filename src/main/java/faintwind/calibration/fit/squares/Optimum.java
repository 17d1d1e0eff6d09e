package faintwind.calibration.fit.squares;

import java.util.Arrays;
import java.util.Optional;

/** Where the sum of squares is least. */
public final class Optimum {
  private final double[] point;
  private final Linearised there;
  private final Optional<Given> given;
  private Optional<double[][]> inverse = Optional.empty();

  /** A variance that a variable was given, other than its curvature says. */
  private record Given(int variable, double variance) {}

  private Optimum(double[] point, Linearised there, Optional<Given> given) {
    this.point = point;
    this.there = there;
    this.given = given;
  }

  /** A point near the least, with the problem there. */
  public static Optimum at(double[] point, Linearised there) {
    return new Optimum(point, there, Optional.empty());
  }

  /**
   * The same with another variance of one variable than the curvature says; the others move with it
   * as the curvature says.
   */
  public Optimum withVariance(int variable, double unitVariance) {
    return new Optimum(point, there, Optional.of(new Given(variable, unitVariance)));
  }

  public double[] point() {
    return point.clone();
  }

  /** Sum of squared residuals. */
  public double sumOfSquares() {
    double norm = there.norm();
    return norm * norm;
  }

  /** Residual standard deviation, n − p degrees of freedom. */
  public double residualDeviation() {
    return Math.sqrt(sumOfSquares() / (there.residuals.length - point.length));
  }

  /**
   * Inverse of JᵀJ: the covariance where the residuals have unit variance; times the squared
   * residual deviation where their variance is taken from the fit.
   */
  public double[][] unitCovariance() {
    double[][] covariance = curvatureCovariance();
    given.ifPresent(g -> widen(covariance, g));
    return covariance;
  }

  /** The same without any other variance that was given to a variable; worked out once. */
  public synchronized double[][] curvatureCovariance() {
    double[][] known = inverse.orElseGet(() -> Triangle.of(there).inverseSquare());
    inverse = Optional.of(known);
    return Arrays.stream(known).map(double[]::clone).toArray(double[][]::new);
  }

  /**
   * Logarithm of the volume in which the variables are likely where one of them is held: the root
   * of the determinant of the others' covariance, without any other variance that was given.
   */
  public double logVolumeAround(int held) {
    return Triangle.of(there).logVolume() - 0.5 * Math.log(curvatureCovariance()[held][held]);
  }

  /**
   * The covariance of the curvature, or where a variable was given less, that: as if something more
   * were known of it (the inverse of JᵀJ with one more square of the variable).
   */
  public double[][] lesserCovariance() {
    double[][] covariance = curvatureCovariance();
    given
        .filter(g -> g.variance() < covariance[g.variable()][g.variable()])
        .ifPresent(g -> widen(covariance, g));
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
