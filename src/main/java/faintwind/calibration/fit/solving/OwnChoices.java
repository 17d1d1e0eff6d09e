package faintwind.calibration.fit.solving;

/**
 * When a fit goes on without a run or its speed, and how closely it is looked for. Each is our own
 * choice, no source. A test that is named fails where one of its group is doubled or halved; "none"
 * means no quick test of the package. FaultsByAnOpponentTest and FaultsAreNamedTest, of minutes,
 * show what all of them are for.
 */
final class OwnChoices {
  // FitToRuns: aSpeedWrittenTwiceAsLargeIsFreed of FewRunsTest shows LEAST_COUNTING (doubled); none
  // the others

  /** Runs whose speed must be left to make a fit. */
  static final int LEAST_COUNTING = 2;

  /** Rounds in which runs are set aside. */
  static final int MOST_ROUNDS_ASIDE = 3;

  /**
   * A rival whose deviance is higher by more than this has lost: what it says of the carried air is
   * of no use to anybody (ten is strong evidence).
   */
  static final double LOST = 300;

  // Refinement: aSpeedWrittenTwiceAsLargeIsFreed of FewRunsTest (halved)

  /** Rounds in which weights and unknowns are settled in turn. */
  static final int ROUNDS = 4;

  // ContradictingSpeeds: none

  /** Fits whose deviances differ by less may rest in one valley. */
  static final double ONE_VALLEY = 1;

  // LeftOutRuns: runsOfWhichMostContradictCarryNoCalibration of CausesTest; none shows
  // LEAST_CONTRADICTION

  /**
   * A run whose speed the others foretell this many standard uncertainties off contradicts them.
   */
  static final double CONTRADICTS = 4.5;

  /** And by this much at least, relative. */
  static final double LEAST_CONTRADICTION = 0.06;

  // SetAside, SpeedPatterns: speedsOffByOneFactorAgree of SetAsideTest shows SPEED_STEP and
  // STEP_OVER_SCATTER; none the others

  /** Scatter between runs from which a lasting change of the speeds is looked for. */
  static final double SCATTERED = 0.018;

  /** Runs among which a lasting change, or two exchanged ones, can be told. */
  static final int LEAST_FOR_PATTERN = 5;

  /** A pattern takes away at least this much of the scatter between runs. */
  static final double HALF = 0.5;

  /** A lasting change of the speeds. */
  static final double SPEED_STEP = 0.04;

  /** And this many times the scatter about it. */
  static final double STEP_OVER_SCATTER = 2;

  /** Delay of start or stop that neither hand nor arm explains, s. */
  static final double DELAYED_S = 6;

  // CarriedSharePosterior: ShareStudyTest, of minutes; none of the quick ones

  /** Power of the other variables' room in the weight of a carried share. */
  static final double ROOM_COUNTS = 0.5;

  /** A valley that is lower by this much is another one. */
  static final double LOWER = 0.3;

  /** Beyond this cost over the least a share has no weight that counts. */
  static final double FAR = 11;

  /** The largest share that is looked at. */
  static final double MOST_SHARE = 0.15;

  private OwnChoices() {}
}
