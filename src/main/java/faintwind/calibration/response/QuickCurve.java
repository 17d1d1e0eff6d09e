package faintwind.calibration.response;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function of a positive number by cubic pieces, 64 of equal width to each doubling of the
 * number, found when they are first asked for. A piece is the same whoever asks first, so that the
 * value is a function of the number alone.
 *
 * <p>Each piece meets the function at the four Chebyshev points of its width w, so that it errs by
 * no more than w⁴/3072 times the greatest fourth derivative there (interpolation at Chebyshev
 * points, a textbook result, from memory). For xᵖ that is 2·10⁻¹¹ |p (p−1) (p−2) (p−3)| of the
 * value. For one thread.
 */
public final class QuickCurve {
  private static final int LOWEST_EXPONENT = -64;
  private static final int DOUBLINGS = 128;
  private static final int PIECE_BITS = 6;
  private static final int PIECES = 1 << PIECE_BITS;
  private static final int SHIFT = 52 - PIECE_BITS;
  private static final long WITHIN = (1L << SHIFT) - 1;
  private static final int ORDER = 4;

  private final DoubleUnaryOperator exact;
  private final double[][] doublings = new double[DOUBLINGS][0];

  /** The curve of a function. */
  public QuickCurve(DoubleUnaryOperator exact) {
    this.exact = exact;
  }

  /** The function; exact for numbers that have no piece, such as 0. */
  public double at(double x) {
    long bits = Double.doubleToRawLongBits(x);
    int doubling = (int) (bits >>> 52) - (1023 + LOWEST_EXPONENT);
    if (doubling < 0 || doubling >= DOUBLINGS) {
      return exact.applyAsDouble(x);
    }
    double[] pieces = doublings[doubling];
    if (pieces.length == 0) {
      pieces = pieces(doubling);
    }
    int at = ((int) (bits >>> SHIFT) & PIECES - 1) * ORDER;
    double t = x - Double.longBitsToDouble(bits & ~WITHIN);
    return pieces[at] + t * (pieces[at + 1] + t * (pieces[at + 2] + t * pieces[at + 3]));
  }

  private double[] pieces(int doubling) {
    double[] pieces = new double[PIECES * ORDER];
    double from = Math.scalb(1.0, doubling + LOWEST_EXPONENT);
    double width = from / PIECES;
    for (int i = 0; i < PIECES; i++) {
      piece(exact, from + i * width, width, pieces, i * ORDER);
    }
    doublings[doubling] = pieces;
    return pieces;
  }

  /** The polynomial through four points in Newton's form, multiplied out. */
  static void piece(DoubleUnaryOperator exact, double from, double width, double[] pieces, int at) {
    double[] t = new double[ORDER];
    double[] c = new double[ORDER];
    for (int i = 0; i < ORDER; i++) {
      t[i] = 0.5 * width * (1 - Math.cos(Math.PI * (2 * i + 1) / (2 * ORDER)));
      c[i] = exact.applyAsDouble(from + t[i]);
    }
    for (int step = 1; step < ORDER; step++) {
      for (int i = ORDER - 1; i >= step; i--) {
        c[i] = (c[i] - c[i - 1]) / (t[i] - t[i - step]);
      }
    }
    for (int step = ORDER - 2; step >= 0; step--) {
      for (int i = step; i < ORDER - 1; i++) {
        c[i] -= t[step] * c[i + 1];
      }
    }
    System.arraycopy(c, 0, pieces, at, ORDER);
  }
}
