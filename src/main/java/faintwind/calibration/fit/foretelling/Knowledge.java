package faintwind.calibration.fit.foretelling;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is known of the formula, the carried air, the radii and the asymmetry: an information
 * matrix. Knowledge of independent recordings adds up. Immutable.
 */
public final class Knowledge {
  private static final Knowledge NONE = new Knowledge(new Array2DRowRealMatrix(1, 1));

  private final RealMatrix information;

  Knowledge(RealMatrix information) {
    this.information = information;
  }

  /** The information about the first unknowns with all others integrated out. */
  static Knowledge leavingOut(RealMatrix whole, int kept) {
    int last = whole.getRowDimension() - 1;
    RealMatrix a = whole.getSubMatrix(0, kept - 1, 0, kept - 1);
    if (kept > last) {
      return new Knowledge(a);
    }
    RealMatrix b = whole.getSubMatrix(kept, last, 0, kept - 1);
    RealMatrix c = whole.getSubMatrix(kept, last, kept, last);
    RealMatrix taken =
        b.transpose().multiply(new CholeskyDecomposition(c, 1e-6, 1e-14).getSolver().solve(b));
    return new Knowledge(a.subtract(taken));
  }

  /** Nothing. */
  public static Knowledge none() {
    return NONE;
  }

  /** Both together. */
  public Knowledge plus(Knowledge other) {
    if (this == NONE || other == NONE) {
      return this == NONE ? other : this;
    }
    return new Knowledge(information.add(other.information));
  }

  /** What follows from this knowledge; the prior must be in it. */
  Settled settled() {
    int n = information.getRowDimension();
    RealMatrix unit = new Array2DRowRealMatrix(n, n);
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = 1 / Math.sqrt(information.getEntry(i, i));
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double mean = (information.getEntry(i, j) + information.getEntry(j, i)) / 2;
        unit.setEntry(i, j, mean * scale[i] * scale[j]);
      }
    }
    return new Settled(
        new ArrayRealVector(scale, false),
        new CholeskyDecomposition(unit, 1e-9, 1e-15).getSolver());
  }

  /**
   * Covariance without its entries.
   *
   * @param scale by which the unknowns were brought to like size
   * @param solver of the scaled information
   */
  record Settled(RealVector scale, DecompositionSolver solver) {
    /** Covariance times a vector. */
    RealVector times(RealVector vector) {
      return solver.solve(vector.ebeMultiply(scale)).ebeMultiply(scale);
    }
  }
}
