package faintwind.calibration.fit.judging;

/**
 * From where on a fit is not believed, a run contradicts the others, and something is told. Each is
 * our own choice, no source. A test that is named fails where one of its group is doubled or
 * halved; "none" means no quick test of the package. FaultsByAnOpponentTest and FaultsAreNamedTest,
 * of minutes, show what all of them are for.
 */
final class OwnChoices {
  // PhysicsGate: LossShapeTest

  /**
   * How far from the belief, in units of it, what says how the loss goes is no ball's: 46 sound
   * sessions of three simulations and the samples lie within 2.5, six sessions that were bent by
   * something unrecorded beyond 4.
   */
  static final double NO_BALL = 3.5;

  // CalibrationAssembly: none

  /** What recordings say of directions or carried air, in units of the belief, to show them. */
  static final double TELLING = 1;

  /** What recordings say at least, in units of the belief. */
  static final double LEAST_INFORMATION = 0.05;

  /** And how far from the belief at most, in units of it. */
  static final double FARTHEST = 4;

  // UnusableFit: runsOfWhichMostContradictCarryNoCalibration of CausesTest; none shows
  // MOST_RESIDUAL and MOST_U95

  /** Residuals of a fit at most, relative. */
  static final double MOST_RESIDUAL = 0.08;

  /** Expanded uncertainty of a speed at most, relative. */
  static final double MOST_U95 = 0.8;

  /** Share of the runs that may contradict the others. */
  static final double MOST_CONTRADICTING = 0.5;

  // Causes: aTenthMoreInAllLaterRunsIsALastingChange of CausesTest; none shows MOST_CAUSES

  /** Causes told of one run. */
  static final int MOST_CAUSES = 2;

  /** A lasting change beyond this is hardly that of a surface. */
  static final double SWITCHED = 0.25;

  // PhysicsGate, PhysicalFit: none

  /** One table in fifty, logarithm. */
  static final double SELDOM = Math.log(50);

  /** How far a slip may be from what the multipliers ask for to be tried first, logarithm. */
  static final double NEAR_SLIP = 1.3;

  // BuildMeeting: suspectsAreNamedByTheirWeightUpToFour of BuildMeetingTest; none shows UNTOLD

  /** Share of the prior's variance above which the runs tell nothing. */
  static final double UNTOLD = 0.7;

  /** Suspects that are named: those at least this likely, relative to the likeliest. */
  static final double LIKELY = 0.02;

  /** And no more than this many. */
  static final int MOST_NAMED = 4;

  // RecordingNotes: aHoleInARecordingIsNamedWithItsPlace, aSpinThatBeginsColdIsNamed,
  // healthyRunsAreWarnedOfTheirOneDirectionOnly of DiagnosisTest, aWarmUpThatEndedTooSoonIsNamed
  // of CausesTest; none shows LEAST_GAP_S, MOST_SPIKES and SUPPLY_DRIFT

  /** A hole in a recording is at least this long, s. */
  static final double LEAST_GAP_S = 30;

  /** And this many usual steps. */
  static final double GAP_STEPS = 10;

  /** Share of rows that may be spikes. */
  static final double MOST_SPIKES = 0.002;

  /** Change of the supply over a recording, relative, that is told. */
  static final double SUPPLY_DRIFT = 0.01;

  /** Share of the difference in still air from which a spin begins warm. */
  static final double WARM = 0.93;

  /** Share of the difference in still air: even the fastest spin leaves more than this. */
  static final double COLD = 0.12;

  // Diagnosis, FitLook: missingLowSpeedsAreNamed, moreCarriedAirThanInMostRoomsIsTold of
  // DiagnosisTest;
  // none shows DRAUGHTY_S and SAME_PARAMETER

  /** Wander at rest that is told as a draught, s. */
  static final double DRAUGHTY_S = 0.03;

  /** A slowest spin above this is told, m/s. */
  static final double LOW_SPEED_M_S = 0.5;

  /**
   * A share of carried air above this is told: 200 sound sessions of three simulations and the
   * samples lie within 0.056; loggers that average, late stops and fans showed 0.07 to 0.14.
   */
  static final double MUCH_CARRIED = 0.065;

  /** Parameters that agree within this share of their standard uncertainty count as the same. */
  static final double SAME_PARAMETER = 0.1;

  // Verdict: theSmallestSpeedIsTwiceItsUncertaintyAtLeast of VerdictTest; none shows where it is
  // looked for

  /** Averaging time of the table, s. */
  static final double AVERAGE_S = 30;

  /** Expanded uncertainty at the smallest speed, relative. */
  static final double SHARE_AT_FLOOR = 0.5;

  /** It is looked for from here, m/s. */
  static final double LOWEST_FLOOR_M_S = 0.004;

  /** To here, m/s. */
  static final double HIGHEST_FLOOR_M_S = 2;

  private OwnChoices() {}
}
