package faintwind.calibration.fit.squares;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * A least-squares problem brought to an upper triangle: |y − R x|² and what no x changes. All runs
 * along rows.
 */
final class Triangle {
  private final double[][] r;
  private final double[] y;

  private Triangle(double[][] r, double[] y) {
    this.r = r;
    this.y = y;
  }

  /** That of a problem; as it is where it comes as one, else by Householder's decomposition. */
  static Triangle of(Linearised problem) {
    int p = problem.jacobian[0].length;
    if (problem.isTriangular()) {
      return new Triangle(problem.jacobian, Arrays.copyOf(problem.residuals, p));
    }
    QRDecomposition decomposed =
        new QRDecomposition(new Array2DRowRealMatrix(problem.jacobian, false));
    double[] y = decomposed.getQT().operate(problem.residuals);
    return new Triangle(decomposed.getR().getData(), Arrays.copyOf(y, p));
  }

  double[] columnNorms() {
    double[] sums = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      double[] row = r[i];
      for (int j = i; j < row.length; j++) {
        sums[j] += row[j] * row[j];
      }
    }
    for (int j = 0; j < sums.length; j++) {
      sums[j] = Math.sqrt(sums[j]);
    }
    return sums;
  }

  /** Rᵀ y. */
  double[] gradient() {
    double[] gradient = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      double[] row = r[i];
      for (int j = i; j < row.length; j++) {
        gradient[j] += row[j] * y[i];
      }
    }
    return gradient;
  }

  /** |R x|². */
  double square(double[] x) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      double part = 0;
      for (int j = i; j < x.length; j++) {
        part += r[i][j] * x[j];
      }
      sum += part * part;
    }
    return sum;
  }

  /** R⁻¹ y. */
  double[] solve() {
    double[] x = y.clone();
    for (int i = x.length - 1; i >= 0; i--) {
      double sum = x[i];
      for (int j = i + 1; j < x.length; j++) {
        sum -= r[i][j] * x[j];
      }
      x[i] = sum / r[i][i];
    }
    return x;
  }

  /** x → R⁻ᵀ x. */
  void solveTransposed(double[] x) {
    for (int i = 0; i < x.length; i++) {
      double[] row = r[i];
      x[i] /= row[i];
      for (int j = i + 1; j < x.length; j++) {
        x[j] -= row[j] * x[i];
      }
    }
  }

  /** The triangle of this problem with the rows factor · D x = 0 added, by Givens' rotations. */
  Triangle damped(double[] diagonal, double factor) {
    int p = y.length;
    double[][] rows = new double[p][];
    for (int i = 0; i < p; i++) {
      rows[i] = r[i].clone();
    }
    double[] right = y.clone();
    double[] added = new double[p];
    for (int j = 0; j < p; j++) {
      Arrays.fill(added, j, p, 0);
      added[j] = factor * diagonal[j];
      double addedRight = 0;
      for (int k = j; k < p; k++) {
        double[] row = rows[k];
        double length = Math.sqrt(row[k] * row[k] + added[k] * added[k]);
        double cos = row[k] / length;
        double sin = added[k] / length;
        row[k] = length;
        rotate(row, added, k + 1, cos, sin);
        double turned = cos * right[k] + sin * addedRight;
        addedRight = cos * addedRight - sin * right[k];
        right[k] = turned;
      }
    }
    return new Triangle(rows, right);
  }

  private static void rotate(double[] row, double[] added, int from, double cos, double sin) {
    for (int i = from; i < row.length; i++) {
      double above = row[i];
      double below = added[i];
      row[i] = cos * above + sin * below;
      added[i] = cos * below - sin * above;
    }
  }

  /** ln √|det (RᵀR)⁻¹|. */
  double logVolume() {
    double sum = 0;
    for (int i = 0; i < y.length; i++) {
      sum -= Math.log(Math.abs(r[i][i]));
    }
    return sum;
  }

  /** (RᵀR)⁻¹. */
  double[][] inverseSquare() {
    int p = y.length;
    double[][] inverse = new double[p][p];
    for (int i = p - 1; i >= 0; i--) {
      double[] row = inverse[i];
      row[i] = 1;
      for (int k = i + 1; k < p; k++) {
        double factor = r[i][k];
        double[] below = inverse[k];
        for (int j = k; j < p; j++) {
          row[j] -= factor * below[j];
        }
      }
      for (int j = i; j < p; j++) {
        row[j] /= r[i][i];
      }
    }
    double[][] product = new double[p][p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int k = i; k < p; k++) {
          sum += inverse[i][k] * inverse[j][k];
        }
        product[i][j] = sum;
        product[j][i] = sum;
      }
    }
    return product;
  }
}
