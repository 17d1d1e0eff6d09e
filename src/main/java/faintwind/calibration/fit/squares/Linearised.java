package faintwind.calibration.fit.squares;

/** Residuals and their Jacobian at one point. */
public final class Linearised {
  public final double[] residuals;
  public final double[][] jacobian;
  private final boolean triangular;

  /** Takes the arrays over without copying. */
  public Linearised(double[] residuals, double[][] jacobian) {
    this(residuals, jacobian, false);
  }

  private Linearised(double[] residuals, double[][] jacobian, boolean triangular) {
    this.residuals = residuals;
    this.jacobian = jacobian;
    this.triangular = triangular;
  }

  /** The same of a Jacobian with nothing below its diagonal. */
  public static Linearised triangular(double[] residuals, double[][] jacobian) {
    return new Linearised(residuals, jacobian, true);
  }

  boolean isTriangular() {
    return triangular;
  }

  /** Root of the sum of squares. */
  public double norm() {
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * residual;
    }
    return Math.sqrt(sum);
  }
}
