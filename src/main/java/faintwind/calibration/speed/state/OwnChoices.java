package faintwind.calibration.speed.state;

/**
 * By what a heater is taken to be off or lost, a wind to have jumped, and what is believed before
 * any row. Each is our own choice, no source; the tests named, over logs of an instrument that
 * obeys the formula exactly and of virtual builds, hold what a group of them is for, not each
 * number by itself.
 */
final class OwnChoices {
  // HeaterWatch: showsInTheHeatBalanceWhereItIsNot of HeaterLostTest; lostHeaterShowsWithoutSupply,
  // windThatRisesIsNoLostHeater of StreamOnVirtualBuildsTest

  /** Share of the still-air difference below which a ball is cool. */
  static final double COOL_SHARE = 0.1;

  /** A cool ball that rises by less than this share of its heating has no heat. */
  static final double SLOW_RISE = 0.1;

  /** One that rises by more than this share of it has. */
  static final double CLEAR_RISE = 0.25;

  /** Over this long it is looked whether the heater is off, s. */
  static final double OFF_WINDOW_S = 60;

  /** And whether it is on again, s. */
  static final double ON_WINDOW_S = 40;

  /** A rise is clear above so many times the noise. */
  static final double RISE_NOISES = 8;

  /** Share of the fall in still air without heat from which a ball falls unheated. */
  static final double UNHEATED_FALL = 0.9;

  /** Loss over that of still air below which a ball that is off falls too slowly. */
  static final double TOO_SLOW_RATIO = 0.5;

  /** An impossible loss must last this long, s. */
  static final double IMPOSSIBLE_S = 30;

  /** And for so many rows. */
  static final int IMPOSSIBLE_ROWS = 3;

  /** Variance of ln(loss) below which it is believed. */
  static final double SURE_VARIANCE = 0.09;

  // HeaterTrace: showsInTheHeatBalanceWhereItIsNot of HeaterLostTest

  /** Share of that fall from which a row before a discovery is taken along. */
  static final double TRACED_FALL = 0.8;

  /** It is looked for over this long, s. */
  static final double TRACED_WINDOW_S = 60;

  /** A difference is taken for no less, K. */
  static final double LEAST_DELTA_K = 0.01;

  /** Below this there is nothing left to fall, K. */
  static final double NOTHING_K = 0.3;

  /** Before a discovery the heater is in doubt for this long, s. */
  static final double DOUBT_S = 1500;

  // LostHeater: showsWithinMinutesInAStreamWithoutSupply of HeaterLostTest;
  // windThatRisesIsNoLostHeater of StreamOnVirtualBuildsTest

  /** Time between two suspicions, s. */
  static final double BETWEEN_S = 4;

  /** Logarithm of the odds from which the heater is lost. */
  static final double SURE = 20;

  /** And below which a suspicion is given up. */
  static final double HOPELESS = -8;

  /** A suspicion must be this old, s. */
  static final double LEAST_AGE_S = 40;

  /** And have seen so many rows. */
  static final int LEAST_ROWS = 5;

  /** It is given up when older, s. */
  static final double LONGEST_S = 1800;

  /** Walk of the loss in an air that stays as it was, 1/√s. */
  static final double AIR_AS_IT_WAS = 1e-3;

  // WindJumps: suddenChangeStaysSharpOnBothSides of SmoothingTest

  /** Of jumps nearer together than this the strongest counts, s. */
  static final double REACH_S = 10;

  /** A jump stands out by so many of its standard deviations. */
  static final double DEVIATIONS = 4;

  /** And by this share of the loss. */
  static final double LEAST_CHANGE = 0.05;

  /** Which is taken for no less than this share of that of still air. */
  static final double LEAST_JUMP_RATIO = 0.5;

  // HeatState: steadySpeedsComeBackAtAnyRowStep of SteadySpeedTest;
  // coldStartIsFlaggedUntilATenthOfTheStillDifference of SpeedFlagsTest

  /** Loss over that of still air that is believed before any row. */
  static final double FIRST_RATIO = 1.8;

  /** Its variance. */
  static final double FIRST_RATIO_VARIANCE = 3;

  /** Variance of the difference before any row, K². */
  static final double FIRST_DELTA_VARIANCE_K2 = 0.25;

  /** Standard deviation of the heat flow, as a share of the heating rate. */
  static final double FIRST_FLOW_SHARE = 0.1;

  /** Variance that is added where the heater was switched. */
  static final double SWITCHED_RATIO_VARIANCE = 2;

  /** The same of the flow, as a share of the heating rate. */
  static final double SWITCHED_FLOW_SHARE = 0.5;

  // WalkStrength: bandOfAnAverageHoldsInGusts of AveragesTest

  /** The walk that is likeliest over a block is weaker than gusts are quick: times its variance. */
  static final double GUSTS = 2;

  private OwnChoices() {}
}
