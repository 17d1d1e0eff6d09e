package faintwind.calibration.fit.numerics;

/**
 * How loud one part of a recording may be, and what the form of the carried air leaves open. Each
 * is our own choice, no source. A test that is named fails where one of its group is doubled or
 * halved; "none" means no quick test of the package.
 */
final class OwnChoices {
  // Unknown: valuesFollowFromTheShape of UnknownTest

  /** Over its spread, how near to nothing what cannot be less stops being linear. */
  static final double SOFTNESS = 0.15;

  // SeenAir: none

  /** Way over draught at which half of the part that a turning arm does not feel is lost. */
  static final double HALF_AT = 4;

  // Wildness: none

  /** Mean square of a part's whitened residuals over the median of all such parts. */
  static final double WILD_PART = 4;

  /** Rows that such a part has at least. */
  static final int LEAST_PART_ROWS = 20;

  /** A row that is off by more of its standard deviations is left out. */
  static final double WILD_ROW = 8;

  private OwnChoices() {}
}
