package faintwind.calibration.pool;

import faintwind.calibration.Covariance;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What the recordings of one session say of the shared unknowns, without what was believed before
 * them: with covariance C and estimates e, of which m was believed with covariance B, the
 * information C⁻¹ − B⁻¹ and its right side C⁻¹e − B⁻¹m. Otherwise what was believed once would
 * count as often as there are instruments.
 */
final class Information {
  private final RealMatrix matrix;
  private final RealVector right;

  private Information(RealMatrix matrix, RealVector right) {
    this.matrix = matrix;
    this.right = right;
  }

  /** What a session adds to the information about the mean. */
  record Pull(RealMatrix information, RealVector right) {}

  static Information of(SessionShown shown) {
    int n = shown.names().size();
    RealMatrix believed = matrix(shown.believed());
    RealVector size = new ArrayRealVector(n);
    for (int i = 0; i < n; i++) {
      size.setEntry(i, Math.sqrt(believed.getEntry(i, i)));
    }
    // believed = S L Lᵀ S, S the standard deviations
    RealMatrix scaled = believed.copy();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        scaled.multiplyEntry(i, j, 1 / size.getEntry(i) / size.getEntry(j));
      }
    }
    RealMatrix lower =
        MatrixUtils.createRealDiagonalMatrix(size.toArray())
            .multiply(new CholeskyDecomposition(scaled, 1e-9, 1e-14).getL());
    RealMatrix whiten = Inverse.of(lower);
    RealVector centre =
        new ArrayRealVector(shown.before().stream().mapToDouble(Double::doubleValue).toArray());
    RealVector found =
        new ArrayRealVector(shown.estimates().stream().mapToDouble(Double::doubleValue).toArray());
    RealVector off = whiten.operate(found.subtract(centre));
    RealMatrix covariance =
        whiten.multiply(matrix(shown.covariance())).multiply(whiten.transpose());
    // in units of what was believed: what the curvature says beyond it cannot be less than nothing
    EigenDecomposition eigen = new EigenDecomposition(symmetric(covariance));
    RealMatrix information = new Array2DRowRealMatrix(n, n);
    RealVector right = new ArrayRealVector(n);
    for (int k = 0; k < n; k++) {
      RealVector along = eigen.getEigenvector(k);
      double more = Math.max(0, 1 / eigen.getRealEigenvalue(k) - 1);
      information = information.add(along.outerProduct(along).scalarMultiply(more));
      // the estimate lies between what was believed (0) and what the recordings alone say
      right = right.add(along.mapMultiply((more + (more > 0 ? 1 : 0)) * along.dotProduct(off)));
    }
    RealMatrix matrix = whiten.transpose().multiply(information).multiply(whiten);
    return new Information(matrix, whiten.transpose().operate(right).add(matrix.operate(centre)));
  }

  private static RealMatrix matrix(Covariance covariance) {
    RealMatrix matrix = new Array2DRowRealMatrix(covariance.size(), covariance.size());
    for (int i = 0; i < covariance.size(); i++) {
      for (int j = 0; j < covariance.size(); j++) {
        matrix.setEntry(i, j, covariance.at(i, j));
      }
    }
    return matrix;
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }

  /** What it says of the mean of instruments that differ by this spread. */
  Pull through(RealMatrix spread) {
    RealMatrix own = Inverse.of(spread);
    RealMatrix through = own.multiply(Inverse.of(matrix.add(own)));
    return new Pull(through.multiply(matrix), through.operate(right));
  }

  /** Expected squares of this instrument's own values about the mean. */
  double[] expectedSquares(RealVector mean, RealMatrix uncertainty, RealMatrix spread) {
    RealMatrix covariance = Inverse.of(matrix.add(Inverse.of(spread)));
    RealVector off = covariance.operate(right.subtract(matrix.operate(mean)));
    RealMatrix byMean = covariance.multiply(matrix);
    RealMatrix all = covariance.add(byMean.multiply(uncertainty).multiply(byMean.transpose()));
    double[] squares = new double[off.getDimension()];
    for (int k = 0; k < squares.length; k++) {
      squares[k] = off.getEntry(k) * off.getEntry(k) + all.getEntry(k, k);
    }
    return squares;
  }

  /** Squared distance from a population, in standard deviations. */
  double squaredFrom(RealVector mean, RealMatrix ofAnother) {
    if (matrix.getNorm() == 0) {
      return 0;
    }
    // with covariance V of the other: (J⁻¹ + V)⁻¹ = J − J (J + V⁻¹)⁻¹ J, also where J is singular
    RealMatrix both = Inverse.of(matrix.add(Inverse.of(ofAnother)));
    RealMatrix weight = matrix.subtract(matrix.multiply(both).multiply(matrix));
    RealVector off = Inverse.of(matrix).operate(right).subtract(mean);
    return off.dotProduct(weight.operate(off));
  }
}
