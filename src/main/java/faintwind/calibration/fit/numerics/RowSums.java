package faintwind.calibration.fit.numerics;

import java.util.Arrays;

/**
 * Sums of products over the weighted rows of one track: what its recordings add to the normal
 * equations. Some rows are taken at once, so that each sum is fetched and stored for all of them
 * together.
 */
final class RowSums {
  private static final int AT_ONCE = 4;

  private final double[][] products;
  private final double[] right;
  private final double[][] waiting;
  private final double[] residuals = new double[AT_ONCE];
  private int count;
  private int begun;
  private double cost;

  RowSums(int width) {
    products = new double[width][width];
    right = new double[width];
    waiting = new double[AT_ONCE][width];
  }

  /** Where the next row is to be written. */
  double[] next() {
    return waiting[count];
  }

  /**
   * Adds the row that was written.
   *
   * @param columns how many leading columns hold something, never fewer than before
   * @param residual its weighted residual
   */
  void add(int columns, double residual) {
    begun = columns;
    residuals[count++] = residual;
    cost += residual * residual;
    if (count == AT_ONCE) {
      sum();
    }
  }

  private void sum() {
    double[] one = waiting[0];
    double[] two = waiting[1];
    double[] three = waiting[2];
    double[] four = waiting[3];
    for (int a = 0; a < begun; a++) {
      double first = one[a];
      double second = two[a];
      double third = three[a];
      double fourth = four[a];
      double[] sums = products[a];
      for (int b = 0; b <= a; b++) {
        sums[b] = sums[b] + first * one[b] + second * two[b] + third * three[b] + fourth * four[b];
      }
      right[a] +=
          first * residuals[0]
              + second * residuals[1]
              + third * residuals[2]
              + fourth * residuals[3];
    }
    count = 0;
  }

  /** Adds all to the normal equations; returns the sum of squares. */
  double into(int[] columns, double[][] normal, double[] normalRight) {
    while (count > 0) {
      Arrays.fill(next(), 0);
      add(begun, 0);
    }
    for (int a = 0; a < columns.length; a++) {
      normalRight[columns[a]] += right[a];
      for (int b = 0; b <= a; b++) {
        normal[columns[a]][columns[b]] += products[a][b];
        if (a != b) {
          normal[columns[b]][columns[a]] += products[a][b];
        }
      }
    }
    return cost;
  }
}
