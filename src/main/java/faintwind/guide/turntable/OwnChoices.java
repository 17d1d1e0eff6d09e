package faintwind.guide.turntable;

/**
 * Limits of what is called a trouble at the table. Each is our own choice, no source, tried on
 * virtual recordings; the tests named are those of LiveGuideTest that show it right.
 */
final class OwnChoices {
  // LiveGuide: warmUpSaysHowLongStillAndComesDownToNothing,
  // warmUpThatNeverFlattensIsToldAndDoesNotKeepThePersonWaiting, unsteadyArmIsTold

  /** A warm-up is flat enough when less than this share is still to come. */
  static final double FLAT = 0.03;

  /** The plan's time is over: this share may still be to come. */
  static final double NEARLY_FLAT = 0.1;

  /** Time constants of spinning that a speed needs: in our simulations two do as well as four. */
  static final double TURNING = 2;

  /** A spin is not drawn out beyond this many times its planned length. */
  static final double LONGEST = 1.5;

  /** The slope shown is that of the last rows of this long, s. */
  static final double SLOPE_S = 30;

  /** Spread of the turn times, relative, above which an arm is called unsteady. */
  static final double UNSTEADY = 0.05;

  /** Change of the turn time over a spin, relative, above which an arm is called unsteady. */
  static final double DRIFTING = 0.1;

  // ExpectedCourse: expectedPathRunsOnFromNowAndComesNearToWhatComes

  /** A course seen differs from the one expected by no more than this factor. */
  static final double FACTOR = 3;

  // CourseTroubles: exchangedLeadsAreToldWithinTwoMinutes, heaterThatIsNotPluggedInIsTold…,
  // armThatDoesNotTurnIsTold…, draughtInAStillStretchIsTold, and without a false alarm
  // noisyBenchWithACarryingArmRaisesNoFalseAlarm

  /** A reaction is looked for from this long after a change, s. */
  static final double LOOK_S = 60;

  /** A reaction, or a sag, is looked for no longer than this, s. */
  static final double LONGEST_LOOK_S = 300;

  /** A change is clear above this many times the noise. */
  static final double CLEAR_OVER_NOISE = 12;

  /** A change is clear above this share of the still signal. */
  static final double CLEAR_SHARE = 0.03;

  /** Factor by which forced convection may differ from what is expected. */
  static final double DOUBT = 1.8;

  /** Time constants of still air after which a warm-up should have settled. */
  static final double SETTLES_AFTER = 5;

  /** Stretch over which a settled signal is looked at, s. */
  static final double SETTLING_S = 600;

  /** A signal is settled when it changes by less than this share over that stretch. */
  static final double SETTLED = 0.01;

  /** A sag is looked for in means of this long, s. */
  static final double SAG_S = 20;

  /** A sag by more than this share is a draught. */
  static final double SAG = 0.012;

  // RowTroubles: signalAtItsStopIsTold, mainsInTheSignalIsTold, changedSupplyIsTold

  /** A signal at its stop has not changed for this long, s. */
  static final double STANDS_S = 20;

  /** And for this many rows. */
  static final int STANDS_ROWS = 8;

  /** It is compared with the rows of this long before, s. */
  static final double BEFORE_S = 40;

  /** By their slope it should have moved by this many times their scatter. */
  static final double SHOULD_MOVE = 4;

  /** A single line of the spectrum that holds this share of it is the mains. */
  static final double RIPPLE_SHARE = 0.5;

  /** Noise this many times the quietest is looked at for the mains. */
  static final double RIPPLE_OVER_NOISE = 3;

  /** So is noise above this share of the still signal. */
  static final double RIPPLE_LEAST = 0.002;

  /** Readings after switching on that tell the supply, the median of them. */
  static final int SUPPLY_FIRST = 30;

  /** A supply that differs from it by more than this share has changed. */
  static final double SUPPLY_CHANGE = 0.005;

  /** Weight of a new reading in the supply of now. */
  static final double SUPPLY_NOW = 0.2;

  private OwnChoices() {}
}
