package faintwind.calibration.profile;

/**
 * How many cells a line has. Where a header names them, as many as there are names; else as many as
 * the first readings have. A delimiter at the end of every line counts for nothing. For one log.
 */
final class LineWidth {
  /** Readings after which their number of cells stands. */
  private static final int SURE = 5;

  /** So many lines alike show that the first reading was the odd one. */
  private static final int ALIKE = 3;

  private int width;
  private int seen;
  private boolean named;
  private int other;
  private int alike;

  /** A header with so many names. */
  void named(int names) {
    width = names;
    named = true;
    seen = 0;
  }

  /** How many cells are expected; 0 where that is not known. */
  int expected() {
    return width;
  }

  /**
   * Whether a line has neither too many cells nor too few.
   *
   * @param endsEmpty whether its last cell is empty
   */
  boolean fits(int cells, boolean endsEmpty) {
    boolean trailing = endsEmpty && cells == width + 1 && seen == 0;
    if (width == 0 || (trailing && named)) {
      width = cells;
      named = false;
    }
    if (cells == width) {
      seen++;
      return true;
    }
    alike = cells == other ? alike + 1 : 1;
    other = cells;
    boolean odd = !named && seen < SURE && alike >= ALIKE;
    if (odd) {
      width = cells;
      seen = alike;
    }
    return odd;
  }
}
