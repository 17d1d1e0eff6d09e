package faintwind.calibration;

import java.util.ArrayList;
import java.util.List;

/** A full covariance matrix in the order of the parameters it belongs to. Immutable. */
public final class Covariance {
  private final double[][] element;

  private Covariance(double[][] element) {
    this.element = element;
  }

  /**
   * A symmetric copy of a square matrix; where the two halves differ, their mean counts.
   *
   * @throws IllegalArgumentException where it is not square or a number is not finite
   */
  public static Covariance of(double[][] matrix) {
    int size = matrix.length;
    double[][] copy = new double[size][size];
    for (int i = 0; i < size; i++) {
      if (matrix[i].length != size) {
        throw new IllegalArgumentException("row " + i + " has " + matrix[i].length + " numbers");
      }
      for (int j = 0; j < size; j++) {
        copy[i][j] = 0.5 * (matrix[i][j] + matrix[j][i]);
        if (!Double.isFinite(copy[i][j])) {
          throw new IllegalArgumentException("covariance " + i + ", " + j + " is not finite");
        }
      }
    }
    return new Covariance(copy);
  }

  /** The same from rows of numbers, as a file holds them. */
  public static Covariance of(List<List<Double>> rows) {
    double[][] matrix = new double[rows.size()][];
    for (int i = 0; i < matrix.length; i++) {
      matrix[i] = rows.get(i).stream().mapToDouble(Double::doubleValue).toArray();
    }
    return of(matrix);
  }

  public int size() {
    return element.length;
  }

  /** Of some of the parameters, by their places, in this order. */
  public Covariance of(int... places) {
    double[][] part = new double[places.length][places.length];
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        part[i][j] = element[places[i]][places[j]];
      }
    }
    return new Covariance(part);
  }

  public double at(int row, int column) {
    return element[row][column];
  }

  /** Rows of numbers, for a file. */
  public List<List<Double>> rows() {
    List<List<Double>> rows = new ArrayList<>();
    for (double[] row : element) {
      List<Double> numbers = new ArrayList<>();
      for (double number : row) {
        numbers.add(number);
      }
      rows.add(List.copyOf(numbers));
    }
    return List.copyOf(rows);
  }

  /**
   * Variance of a quantity with this gradient: Σ cᵢ cⱼ u(xᵢ, xⱼ). Source: JCGM 100:2008, equation
   * (13).
   */
  public double variance(double[] gradient) {
    if (gradient.length != element.length) {
      throw new IllegalArgumentException("gradient has " + gradient.length + " numbers");
    }
    double sum = 0;
    for (int i = 0; i < gradient.length; i++) {
      double[] row = element[i];
      double twice = 0;
      for (int j = 0; j < i; j++) {
        twice += gradient[j] * row[j];
      }
      sum += gradient[i] * (2 * twice + gradient[i] * row[i]);
    }
    return Math.max(0, sum);
  }
}
