package faintwind.calibration.fit.health;

/**
 * From where on a run counts as not healthy. Each is our own choice, no source. A test that is
 * named fails where one of its group is doubled or halved; "none" means no quick test of the
 * package. The first were set so that the runs of healthy virtual builds and benches, draughty
 * classroom gear among them, lie inside (their means at rest scatter by 0.2 to 1.3 %, single blocks
 * by up to 3 %).
 */
final class OwnChoices {
  // OddRuns, LastingChange, Ailment, Ailments: LastingChangeTest, AilmentsTest;
  // aBallThatStaysCoolerAtRestAndTurningHasChanged and
  // manyBlocksInOneDraughtAreNoSurerThanRunsScatter of OddRunsTest. None shows UNSTEADY,
  // SPEAKS_AGAINST, HEATER_OFF; FaultsByAnOpponentTest shows what all of them are for

  /** Heat at rest against the other runs. */
  static final double REST_OFF = 0.02;

  /** Least scatter between runs that healthy ones are granted. */
  static final double LEAST_SCATTER = 0.003;

  /** Heat in a single block at rest that tells of moving air. */
  static final double BLOCK_OFF = 0.03;

  /** And this many of its standard uncertainties. */
  static final double BLOCK_SURE = 5;

  /** Size of a pattern in one run, relative. */
  static final double PATTERN_OFF = 0.02;

  /** Size of one that touches a part of the run only. */
  static final double PART_OFF = 0.05;

  /**
   * Scatter of neighbouring blocks in their standard uncertainties from which a rest is unsteady.
   */
  static final double UNSTEADY = 2.5;

  /**
   * Sum of squared standardised deviations that it explains: 21 would be met by chance in one
   * session of a thousand with some 200 looks (χ² of one degree of freedom), and the scatter they
   * are held against is known from few runs.
   */
  static final double PATTERN_SURE = 25;

  /** A step between two groups of runs, in their scatter. */
  static final double STEP_SURE = 6;

  /**
   * By how much more an explanation must leave, sum of squared standardised deviations, to be
   * spoken against: strong evidence.
   */
  static final double SPEAKS_AGAINST = 10;

  /** Fewest runs that a comparison needs. */
  static final int LEAST_RUNS = 4;

  /** Below this share of the heat the heater was off. */
  static final double HEATER_OFF = 0.35;

  // Deviations: manyBlocksInOneDraughtAreNoSurerThanRunsScatter of OddRunsTest

  /** Time over which the draught at rest changes, s: rests of two runs are farther. */
  static final double MEMORY_S = 600;

  // Ailments: whatGetsLessAndLessIsFading of AilmentsTest; none shows what follows
  // DRYING_S

  /** Time constants with which water may dry, s. */
  static final double[] DRYING_S = {150, 400, 1000};

  /** A pattern that leaves at most this many times what the best leaves is told with it. */
  static final double NEARLY = 1.5;

  /** Or this much more. */
  static final double NEARLY_LEAST = 10;

  /** What a pattern pays for the freedom to choose how fast it fades. */
  static final double PRICE_OF_FADING = 6;

  /** What it pays for the freedom to choose where it begins. */
  static final double PRICE_OF_STEP = 8;

  // HeatCourse: blocksLieWithinTheirPhase, uncertaintyIsThatOfFormAndWander,
  // aBlockLastsFiftySecondsAtLeast, aBallThatIsStillColdHasNoBlock of HeatCourseTest; none shows
  // LEAST_BLOCK_ROWS, nor BEFORE_CHANGE_S doubled

  /** Usual length of a block, s. */
  static final double BLOCK_S = 150;

  /** Least length of a block, s. */
  static final double LEAST_BLOCK_S = 50;

  /** Fewest rows of a block. */
  static final int LEAST_BLOCK_ROWS = 4;

  /** This long before a change of the arm is left out, since its time is known to a second, s. */
  static final double BEFORE_CHANGE_S = 3;

  /** After a change of the arm the resistor, the bead and the run-up settle for this long, s. */
  static final double SETTLE_S = 25;

  /** Share of the largest difference from which a ball counts as warming. */
  static final double WARM = 0.12;

  /** Least relative standard uncertainty of a block: form of the formula. */
  static final double FORM = 0.003;

  /** Relative standard uncertainty of a speed beyond what was stated. */
  static final double SPEED_OFF = 0.012;

  // DataCheck: aRecordingOfElevenRowsIsTooShortButForAZero, aSpinOfLessThanAMinuteIsTooShort,
  // aRoomInDegreesFahrenheitIsNamed of DataCheckTest

  /** Fewest rows of a recording, but for a zero run. */
  static final int LEAST_ROWS = 12;

  /** Shortest spin, s. */
  static final double LEAST_SPIN_S = 60;

  /** No room is hotter, °C. */
  static final double HOTTEST_C = 46;

  /** The same in °F. */
  static final double HOTTEST_F = 115;

  // SignalCheck: anotherClockIsOnlySaidToDiffer, aSpinMustFallByThreeHundredths,
  // theSignOfARunCountsFromATenthOfTheLargest of SignalCheckTest

  /** Time of a spin on the file's clock over that of its counted turns, at least. */
  static final double CLOCK_LOW = 0.7;

  /** The same at most. */
  static final double CLOCK_HIGH = 4;

  /** Share of the largest signal above which the ball has rested before a spin. */
  static final double RESTED = 0.8;

  /** Least fall of the signal in a spin, relative. */
  static final double LEAST_FALL = 0.03;

  /** Share of the largest signal from which a run's sign counts. */
  static final double REVERSED = 0.1;

  // HeaterCheck: aSpinThatKeepsFallingAfterItsStopHasLostItsHeater, aSlowFallIsNotTheHeater,
  // aSpinThatWasNeverWarmHadItsHeaterOff, aQuickFallByAnEighthIsTheHeater,
  // aHeaterBringsTheBallBackByATwentiethOfItsLevel of HeaterCheckTest

  /** After a stop the air carried round may still cool, s. */
  static final double AFTER_STOP_S = 60;

  /** A fall is looked for in two stretches of this length, s. */
  static final double FALL_SPAN_S = 60;

  /** Fall at rest, 1/s: a third of a usual ball's own rate in still air. */
  static final double FALLS_1_S = 0.0008;

  /** And in all, relative to the level: more than a draught does. */
  static final double FALL = 0.12;

  /** Rise from its least, relative to the level, that shows a heater. */
  static final double BACK = 0.05;

  /** Share of the other runs' level below which a moved run was never heated. */
  static final double NEVER_HEATED = 0.12;

  // Leak: aJumpOfAFiftiethIsTheLeast,
  // aRecordingThatBeginsAboveThreeTenthsOfTheLargestIsOfAWarmBall,
  // aRecordingShorterThanTenMinutesSaysNothing, aJumpIsLookedForInTheFirstTwoMinutes,
  // aFirstRowThatTheRiseGoesOnFromIsNoJump, aJumpDownIsNegative of LeakTest; none shows
  // LEAK_LOOK_S,
  // nor LEAK_KEEPS and LEAK_MOST halved

  /** Least jump over the largest signal that is a leak. */
  static final double LEAST_LEAK = 0.02;

  /** Share of the largest signal below which a ball is cold. */
  static final double COLD = 0.3;

  /** A jump comes between two rows, or three, s; a ball takes minutes. */
  static final double SUDDEN_S = 4;

  /** A recording shorter than this does not show how the ball warms, s. */
  static final double LEAK_LEAST_S = 600;

  /** The beginning of a recording in which rows are looked at, s. */
  static final double LEAK_LOOK_S = 300;

  /** A heater comes on within this of the first row, s. */
  static final double LEAK_BEGINS_S = 120;

  /** What rises by warming is seen by the change so much later, s. */
  static final double LEAK_RISE_S = 30;

  /** A first row that is a jump is more than this share of the rise after it. */
  static final double LEAK_OF_RISE = 0.3;

  /** Share of a jump that is still there three sudden changes later. */
  static final double LEAK_KEEPS = 0.3;

  /** Most of a jump, or of a supply, is more than this share of it. */
  static final double LEAK_MOST = 0.5;

  // Slip: speedsWithinATenthOnTheLogarithmAreNear of SlipTest

  /** How near a found factor must come, on the logarithm: a tenth. */
  static final double NEAR = 0.1;

  // SpinMarks: marksThatComeTooLateAreTold, marksWithinAQuarterOfAMinuteFit,
  // bothEndsAreOffByTheSameWithinAQuarterOfAMinute of SpinMarksTest; none shows BEND_SPAN_S and
  // MARK_STEP_S

  /** A bend is looked for within this of a mark, s. */
  static final double MARK_REACH_S = 150;

  /** Slopes before and after it are those over this long, s. */
  static final double BEND_SPAN_S = 8;

  /** It is looked for in steps of this, s. */
  static final double MARK_STEP_S = 2;

  /** Both ends are off by the same, within this, s. */
  static final double SAME_SHIFT_S = 15;

  /** A shift that counts, s: a person's reaction and the run-up are far less. */
  static final double LEAST_SHIFT_S = 15;

  private OwnChoices() {}
}
