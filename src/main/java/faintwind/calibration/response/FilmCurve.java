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
  private static final int ORDER = 4;
  private static final int BOTH = 2 * ORDER;

  private final double[] pieces;

  /** The part that does not hang on the difference, 1/s; then the factor of its fourth root. */
  double constant;

  double free;

  /** Their changes with the film's temperature. */
  double constantSlope;

  double freeSlope;

  FilmCurve(DoubleUnaryOperator constant, DoubleUnaryOperator free) {
    int count = (int) ((HIGHEST_K - LOWEST_K) * PIECES_1_K);
    pieces = new double[count * BOTH];
    for (int i = 0; i < count; i++) {
      double from_K = LOWEST_K + i / PIECES_1_K;
      QuickCurve.piece(constant, from_K, 1 / PIECES_1_K, pieces, i * BOTH);
      QuickCurve.piece(free, from_K, 1 / PIECES_1_K, pieces, i * BOTH + ORDER);
    }
  }

  /** Finds both parts; false beyond what it was filled for. */
  boolean at(double film_K) {
    double place = (film_K - LOWEST_K) * PIECES_1_K;
    int piece = (int) place;
    int at = piece * BOTH;
    if (!(place >= 0) || at >= pieces.length) {
      return false;
    }
    double t = (place - piece) / PIECES_1_K;
    double c1 = pieces[at + 1];
    double c2 = pieces[at + 2];
    double c3 = pieces[at + 3];
    constant = pieces[at] + t * (c1 + t * (c2 + t * c3));
    constantSlope = c1 + t * (2 * c2 + 3 * t * c3);
    double f1 = pieces[at + 5];
    double f2 = pieces[at + 6];
    double f3 = pieces[at + 7];
    free = pieces[at + 4] + t * (f1 + t * (f2 + t * f3));
    freeSlope = f1 + t * (2 * f2 + 3 * t * f3);
    return true;
  }
}
