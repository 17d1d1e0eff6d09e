package faintwind.calibration.plan;

/**
 * What a plan of the turntable takes for good. Each is our own choice, no source; the tests named
 * show it right: those of RankingsTest against a simulation study of whole calibrations.
 */
final class OwnChoices {
  // Candidates: beatsAreWithinTheComfortableOnesAndGiveTheSpeed, speedsReachBothEndsOfTheRange of
  // PlannerTest

  /** Speeds looked at. */
  static final int SPEEDS_TRIED = 13;

  /** A whole number of beats may move a speed by this share. */
  static final double MOST_OFF = 0.06;

  /** Acceleration towards the middle that balls and wires take, m/s². */
  static final double MOST_INWARD_M_S2 = 15;

  // Candidates, Pace: twoTimeConstantsAreAsGoodAsFour, oneTimeConstantCosts1_6to2_5 of RankingsTest

  /** Time constants of turning below which a speed is not worth it. */
  static final double LEAST_CONSTANTS = 1;

  // Pace: restOf120IsAsGoodAs400, restsOf20SecondsCost1_4to1_7OfAStaircase of RankingsTest

  /** The rest after a stop that a fit needs to see the carried air, s. */
  static final double LEAST_REST_S = 120;

  // Pace: warmUpOf20MinutesIsNoBetterThan50 of RankingsTest; stepsFollowOneAnotherWithoutGap of
  // PlannerTest

  /** Heater off before anything, s. */
  static final double ZERO_S = 600;

  /** Still air at the end, s. */
  static final double STILL_S = 420;

  /** Taking the balls to another radius, s. */
  static final double MOVE_S = 120;

  /** Left alone after that, recorded, before the arm turns, s. */
  static final double SETTLE_S = 180;

  // Schedule: staircaseIsOneWarmUpThenSpeedsWithRestsOfTwoMinutesOrMore, lessonsAreKeptAndBeginWarm
  // of PlannerTest

  /** Lead and coast that the counted turns leave out, s. */
  static final double NOT_COUNTED_S = 10;

  /** Full temperature, for the straight-line look: within this share of it. */
  static final double FULL = 0.02;

  /** Packing up at the end of a lesson, s. */
  static final double PACKING_S = 240;

  // Planner, PlanRules, PlanWish: fiveSpeedsCost1_2to1_4 of RankingsTest,
  // choiceOfSpeedsIsAsGoodAsTryingAll of ExchangeTest, beatsThatReachNoSpeedAreRefused of
  // PlannerTest

  /** Fewer speeds tell no curve. */
  static final int FEWEST_SPEEDS = 3;

  /** Speeds of a session that has the time. */
  static final int USUAL_SPEEDS = 7;

  /** More are not worth their time. */
  static final int MOST_SPEEDS = 9;

  /** Fastest over slowest speed at least: over less the runs tell no curve. */
  static final double NARROWEST = 1.5;

  /** Speeds of the range at which the promise is looked at. */
  static final int LOOKS = 9;

  // PlannedRuns: aUsualSessionPromisesAboutAPerCent of RankingsTest

  /** Rows of the planned recordings, no closer than the fit's finest average, s. */
  static final double STEP_S = 3;

  // NotedSpins, PlanRules: questions to a person, TypedRunsModelTest and PlanCommandTest

  /** Noted within this share of the plan is as planned. */
  static final double SAME = 0.01;

  /** A hand keeps a beat far better than this share. */
  static final double FAR = 0.15;

  /** Readings that a person will type from a film without complaint. */
  static final double MANY_READINGS = 900;

  private OwnChoices() {}
}
