package faintwind.calibration.response;

import java.util.function.DoubleUnaryOperator;

/** A polynomial of third order in t = x − from, which takes a function's place over a width. */
final class CubicPiece {
  private static final int POINTS = 4;

  final double from;
  final double c0;
  final double c1;
  final double c2;
  final double c3;

  private CubicPiece(double from, double[] c) {
    this.from = from;
    c0 = c[0];
    c1 = c[1];
    c2 = c[2];
    c3 = c[3];
  }

  /**
   * Through the function's values at the four Chebyshev points of the width, by Newton's form
   * multiplied out.
   */
  static CubicPiece of(DoubleUnaryOperator exact, double from, double width) {
    double[] t = new double[POINTS];
    double[] c = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      t[i] = 0.5 * width * (1 - Math.cos(Math.PI * (2 * i + 1) / (2 * POINTS)));
      c[i] = exact.applyAsDouble(from + t[i]);
    }
    for (int step = 1; step < POINTS; step++) {
      for (int i = POINTS - 1; i >= step; i--) {
        c[i] = (c[i] - c[i - 1]) / (t[i] - t[i - step]);
      }
    }
    for (int step = POINTS - 2; step >= 0; step--) {
      for (int i = step; i < POINTS - 1; i++) {
        c[i] -= t[step] * c[i + 1];
      }
    }
    return new CubicPiece(from, c);
  }
}
