package faintwind.calibration.response;

import java.util.function.DoubleUnaryOperator;

/**
 * The two parts that the loss of still air has of the film's temperature, by cubic pieces of 4 K
 * through the Chebyshev points of each: within 10⁻¹¹ for powers of a temperature (see {@link
 * QuickCurve}). Filled at once, so that it is a function of its argument alone. For one thread.
 */
final class FilmCurve {
  static final double LOWEST_K = 200;
  static final double HIGHEST_K = 520;
  private static final double PIECES_1_K = 0.25;

  private final Piece[] pieces;

  /** A part and its change with the film's temperature, for both parts; what was found last. */
  double constant;

  double free;
  double constantSlope;
  double freeSlope;

  /** The part that does not hang on the difference, 1/s; then the factor of its fourth root. */
  FilmCurve(DoubleUnaryOperator constant, DoubleUnaryOperator free) {
    pieces = new Piece[(int) ((HIGHEST_K - LOWEST_K) * PIECES_1_K)];
    for (int i = 0; i < pieces.length; i++) {
      double from_K = LOWEST_K + i / PIECES_1_K;
      pieces[i] =
          new Piece(
              CubicPiece.of(constant, from_K, 1 / PIECES_1_K),
              CubicPiece.of(free, from_K, 1 / PIECES_1_K));
    }
  }

  /** Finds both parts; false beyond what it was filled for. */
  boolean at(double film_K) {
    double place = (film_K - LOWEST_K) * PIECES_1_K;
    int piece = (int) place;
    if (!(place >= 0) || piece >= pieces.length) {
      return false;
    }
    CubicPiece first = pieces[piece].constant;
    double t = film_K - first.from;
    constant = first.c0 + t * (first.c1 + t * (first.c2 + t * first.c3));
    constantSlope = first.c1 + t * (2 * first.c2 + 3 * t * first.c3);
    CubicPiece second = pieces[piece].free;
    free = second.c0 + t * (second.c1 + t * (second.c2 + t * second.c3));
    freeSlope = second.c1 + t * (2 * second.c2 + 3 * t * second.c3);
    return true;
  }

  private record Piece(CubicPiece constant, CubicPiece free) {}
}
