package faintwind.calibration.fit.numerics;

/**
 * What a fit believes before it looks (more of it in {@link ArmPriors} and {@link Setup}), and how
 * loud one run may be. Each is our own choice, no source. A test that is named fails where one of
 * its group is doubled or halved; "none" means no quick test of the package.
 */
final class OwnChoices {
  // CountingHabit: moreThanATurnLeftOverWasCountedFromAClick, noSpinIsTooLoud of
  // CountingHabitTest; none shows LATER_S

  /** Standard uncertainty of the noted start and stop together, s: common practice. */
  static final double U_NOTED_S = 1;

  /** One run speaks no louder than this for either habit. */
  static final double LOUDEST = 20;

  /** All runs together speak no louder than this, logarithm. */
  static final double LOUDEST_ALL = 6;

  /** Who waits for a steady arm notes the first click within this time, s. */
  static final double LATER_S = 30;

  // CarriedKnown, SeenAir: none

  /**
   * What the form of the carried air, other after the stop than in the spin, leaves beside rise,
   * decay and slowing, which are unknowns of the fit.
   */
  static final double CARRIED_FORM = 0.002;

  /** Over the draught, the way at which half of that is lost. */
  static final double HALF_AT = 4;

  // RunScatter: aRunFarOffDragsLittle of RunScatterTest

  /** Scatter between runs that is expected, relative. */
  static final double EXPECTED_SCATTER = 0.005;

  /** The expectation counts as so many runs. */
  static final double WORTH = 2;

  /** Degrees of freedom of Student's t. */
  static final double FREEDOM = 4;

  // BuildPriors: theRecordSharpensWhatIsExpected of BuildPriorsTest; none shows U_ADDED and
  // U_DESIGNED_LEADS

  /**
   * What else the heat capacity, the conduction limit or the heating of a build may be off by,
   * relative.
   */
  static final double U_ADDED = 0.03;

  /** Relative standard uncertainty of the signal's scale in kelvin. */
  static final double U_SCALE = 0.03;

  /** The same of the leads' loss by the design, logarithm. */
  static final double U_DESIGNED_LEADS = 0.5;

  // Wildness: none

  /** Mean square of a part's whitened residuals over the median of all such parts. */
  static final double WILD_PART = 4;

  /** Rows that such a part has at least. */
  static final int LEAST_PART_ROWS = 20;

  /** A row that is off by more of its standard deviations is left out. */
  static final double WILD_ROW = 8;

  // Unknown: valuesFollowFromTheShape of UnknownTest

  /** Over its spread, how near to nothing what cannot be less stops being linear. */
  static final double SOFTNESS = 0.15;

  private OwnChoices() {}
}
