package faintwind.calibration.response;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

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
  private static final int FIRST = (1023 + LOWEST_EXPONENT) << PIECE_BITS;

  private final DoubleUnaryOperator exact;

  /** In one row, so that a piece takes one access: a number's leading bits are its place. */
  private final @Nullable CubicPiece[] pieces = new CubicPiece[DOUBLINGS * PIECES];

  /** The curve of a function. */
  public QuickCurve(DoubleUnaryOperator exact) {
    this.exact = exact;
  }

  /** The function; exact for numbers that have no piece, such as 0. */
  public double at(double x) {
    int place = (int) (Double.doubleToRawLongBits(x) >>> SHIFT) - FIRST;
    if (place < 0 || place >= pieces.length) {
      return exact.applyAsDouble(x);
    }
    CubicPiece piece = pieces[place];
    if (piece == null) {
      piece = piece(place);
    }
    double t = x - piece.from;
    return piece.c0 + t * (piece.c1 + t * (piece.c2 + t * piece.c3));
  }

  private CubicPiece piece(int place) {
    double from = Math.scalb(1.0, place / PIECES + LOWEST_EXPONENT);
    double width = from / PIECES;
    CubicPiece piece = CubicPiece.of(exact, from + place % PIECES * width, width);
    pieces[place] = piece;
    return piece;
  }
}
