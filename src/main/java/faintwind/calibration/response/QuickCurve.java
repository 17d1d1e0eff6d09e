package faintwind.calibration.response;

import java.util.Arrays;
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

  private final DoubleUnaryOperator exact;
  private final @Nullable CubicPiece[] none = new CubicPiece[PIECES];
  private final @Nullable CubicPiece[][] doublings = new CubicPiece[DOUBLINGS][];

  /** The curve of a function. */
  public QuickCurve(DoubleUnaryOperator exact) {
    this.exact = exact;
    Arrays.fill(doublings, none);
  }

  /** The function; exact for numbers that have no piece, such as 0. */
  public double at(double x) {
    long bits = Double.doubleToRawLongBits(x);
    int doubling = (int) (bits >>> 52) - (1023 + LOWEST_EXPONENT);
    if (doubling < 0 || doubling >= DOUBLINGS) {
      return exact.applyAsDouble(x);
    }
    int place = (int) (bits >>> SHIFT) & PIECES - 1;
    CubicPiece piece = doublings[doubling][place];
    if (piece == null) {
      piece = piece(doubling, place);
    }
    double t = x - piece.from;
    return piece.c0 + t * (piece.c1 + t * (piece.c2 + t * piece.c3));
  }

  private CubicPiece piece(int doubling, int place) {
    if (doublings[doubling] == none) {
      doublings[doubling] = new CubicPiece[PIECES];
    }
    double from = Math.scalb(1.0, doubling + LOWEST_EXPONENT);
    double width = from / PIECES;
    CubicPiece piece = CubicPiece.of(exact, from + place * width, width);
    doublings[doubling][place] = piece;
    return piece;
  }
}
