package faintwind.calibration.speed;

/**
 * What an estimator of the speed takes for a gap, a spike or a jump, and how it judges a row. Each
 * is our own choice, no source; the tests named, over logs of an instrument that obeys the formula
 * exactly, hold what a group of them is for, not each number by itself. A calibration file carries
 * them by the names of {@link LiveSettings}.
 */
final class OwnChoices {
  // LogPreparation: breakInTheRecordIsFlaggedJustAfterAndNotForLong, aFewMissingRowsAreNoBreak,
  // anImpossibleJumpDoesNotBendTheSpeed of SpeedFlagsTest

  /** Usual steps between two rows beyond which there is a gap. */
  static final double GAP_STEPS = 3.05;

  /** A gap is at least this long, s. */
  static final double LEAST_GAP_S = 1;

  /** After a gap of this length nothing of before counts, s. */
  static final double LONG_GAP_S = 1800;

  /** A spike stands out by as many times the noise. */
  static final double SPIKE_NOISES = 8;

  /** As many rows alike are no spike. */
  static final int SPIKES_IN_A_ROW = 3;

  /** By how much a change may exceed what the heat balance allows. */
  static final double SPIKE_ALLOWANCE = 1.3;

  // FieldAir: speedComesBackInOtherAir, aPressureThatNobodyRecordedWidensTheBandByWhatItDoes of
  // SteadySpeedTest

  /** The air is smoothed over this long, s. */
  static final double AIR_SMOOTHING_S = 60;

  /** An air temperature that jumps by more is no change of the air, K. */
  static final double AIR_JUMP_K = 5;

  /** Unless it stands for this long, s. */
  static final double AIR_JUMP_STANDS_S = 120;

  /** Standard uncertainty of a room that is as in the calibration for all that is known, K. */
  static final double U_AIR_UNRECORDED_K = 1.5;

  /** The same of its pressure, relative: the weather of a place, some 10 hPa. */
  static final double U_PRESSURE_UNRECORDED = 0.01;

  // FieldSupply: lowerSupplyIsCorrectedByItsPower of SteadySpeedTest; supplyFarOffIsFlaggedPower of
  // SpeedFlagsTest; showsAtOnceWhereTheSupplyIsRecorded of HeaterLostTest

  /** A supply farther from the calibration's, relative, is flagged. */
  static final double SUPPLY_TOLERANCE = 0.05;

  /** Below this share of the calibration's supply the heater is off. */
  static final double SUPPLY_OFF_SHARE = 0.5;

  /** The same where the calibration knows no supply, V. */
  static final double SUPPLY_OFF_V = 0.5;

  /** The supply is smoothed over this long, s. */
  static final double SUPPLY_SMOOTHING_S = 20;

  /** A jump by more, relative, is followed at once. */
  static final double SUPPLY_JUMP_SHARE = 0.02;

  // FilteredSpeed: bandsOfSteadyWindAreTrueAndNotTooWide,
  // bandsOfGustyWindHoldTheTruthAsOftenAsTheySay of StreamOnVirtualBuildsTest

  /** The strength of the walk that speaks first, by its place from 0. */
  static final int FIRST_WALK = 2;

  /** By how much another strength must have foretold better to be followed instead. */
  static final double SWITCH_MARGIN = 1;

  /** How long a score remembers, s. */
  static final double SCORE_MEMORY_S = 900;

  /** The square of a miss counts for no more in a score. */
  static final double SCORE_CLIP2 = 50;

  /** A filter is scored after so many rows. */
  static final int SCORE_AFTER_ROWS = 20;

  /** Share of the drift of misses that is kept from row to row. */
  static final double DRIFT_KEEP = 0.7;

  /** A drift of as many usual misses is a jump of the wind. */
  static final double SURE_JUMP = 5;

  /** A jump leaves room for a change of the loss by this share. */
  static final double JUMP_SHARE = 0.5;

  /** What a jump that was not foreseen costs of the score. */
  static final double JUMP_COST = 8;

  /** The square of a miss counts for no more in what is usual. */
  static final double USUAL_CLIP2 = 9;

  /** What is usual is that of as many rows. */
  static final double USUAL_ROWS = 100;

  // RowJudge: coldStartIsFlaggedUntilATenthOfTheStillDifference,
  // stillAirIsBelowTheFloorAndABreezeIsNot of SpeedFlagsTest; bandOfAnAverageHoldsInGusts of
  // AveragesTest

  /** Share of the still-air difference from which a ball is warm. */
  static final double WARM_SHARE = 0.1;

  /** Variance of ln(loss) below which an estimator has settled. */
  static final double SETTLED_VARIANCE = 0.01;

  /** This long after its beginning it has in any case, s. */
  static final double SURELY_SETTLED_S = 120;

  /** After a gap the flag stays while the variance is more than so many times that before it. */
  static final double GAP_VARIANCE_RATIO = 4;

  /** A difference is taken for no less, K. */
  static final double LEAST_SHOWN_K = 0.05;

  /** By how much longer an error lasts where it is one of rounding. */
  static final double COARSE_MEMORY = 1.6;

  /** An error lasts no longer, s. */
  static final double LONGEST_MEMORY_S = 600;

  /** Variance of ln(loss) from which the bend of the formula moves the mean. */
  static final double LEAST_BEND_VARIANCE = 1e-4;

  /** And still air must lie this many times √3 standard deviations away. */
  static final double STILL_AWAY = 2;

  // SpeedUncertainty: bandsOfSteadyWindAreTrueAndNotTooWide of StreamOnVirtualBuildsTest;
  // theDirectionOfTheFlowMattersMoreForALargerBall of SteadySpeedTest; bandOfAMinuteHoldsInGusts of
  // AveragesTest

  /** Relative standard uncertainty of the heating rate where the log records no supply. */
  static final double U_HEATING_UNSEEN = 0.005;

  /** Share of a speed within which its formula counts as straight. */
  static final double NEARLY_STRAIGHT = 0.2;

  /** What the direction of the flow does where natural convection rules, relative. */
  static final double DIRECTION_U95 = 0.06;

  /** Gr/Re² from which the direction counts. */
  static final double MIXED = 0.1;

  /** What else the lag of the junction may be off by, s: it hides behind the start of a spin. */
  static final double U_LAG_S = 0.6;

  private OwnChoices() {}
}
