package faintwind.calibration.pool;

import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/** Inverses of matrices whose rows are of very different size. */
final class Inverse {
  private static final double SINGULAR = 1e-300;

  private Inverse() {}

  static RealMatrix of(RealMatrix matrix) {
    return new LUDecomposition(matrix, SINGULAR).getSolver().getInverse();
  }
}
