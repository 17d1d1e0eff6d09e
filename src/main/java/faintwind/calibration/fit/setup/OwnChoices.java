package faintwind.calibration.fit.setup;

/**
 * What a fit believes before it looks (what it believes of an arm is in {@link ArmPriors}), and how
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

  // RunScatter: aRunFarOffDragsLittle of RunScatterTest; none shows FIRST_SCATTER

  /** Scatter between runs before any fit, relative. */
  static final double FIRST_SCATTER = 0.01;

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

  // Setup, TurnUnknowns: coverageIsThatOfTheRuns of CalibrationAssemblyTest shows CARRIED_SHARE
  // and CARRIED_SPREAD, anArmWithoutARestOfTwoMinutesHasShortRests of RunScatterTest REST_AFTER_S,
  // aSpeedThatDoesNotCountIsLeftAlone there FREE_SPREAD, and
  // gaussAndNewtonFindWhatLevenbergAndMarquardtFind of SettledSearchTest STILL_LOSS_1_S and
  // SWITCHING_S; none the others

  /** Delay of the begin and end of a reference flow, s. */
  static final double DELAY_S = 3;

  /** Time in which a reference flow comes and goes, s. */
  static final double FLOW_RUN_S = 2;

  /** Spread of its logarithm. */
  static final double U_FLOW_RUN = 0.7;

  /** Carried air before any recording, where nobody states it. */
  static final double CARRIED_SHARE = 0.03;

  /** Its standard deviation. */
  static final double CARRIED_SPREAD = 0.02;

  /** Rest after a stop beyond which no more is learned of the carried air, s. */
  static final double REST_AFTER_S = 120;

  /** Loss of a usual ball in still air, 1/s. */
  static final double STILL_LOSS_1_S = 0.0025;

  /** Spread of the logarithm of the heating that follows from it. */
  static final double U_HEATING = 0.7;

  /** Spread of an offset that nobody knows, of the largest signal. */
  static final double U_OFFSET = 0.03;

  /** After the heater was switched on, s. */
  static final double SWITCHING_S = 30;

  /** Of the largest difference, below which a recording begins cold. */
  static final double COLD = 0.15;

  /** Spread of a speed that does not count. */
  static final double FREE_SPREAD = 3;

  // CarriedKnown: none

  /**
   * What the form of the carried air, other after the stop than in the spin, leaves beside rise,
   * decay and slowing, which are unknowns of the fit.
   */
  static final double CARRIED_FORM = 0.002;

  private OwnChoices() {}
}
