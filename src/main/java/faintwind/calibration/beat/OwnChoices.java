package faintwind.calibration.beat;

/**
 * Limits by which beats are counted and clicks are heard. Each is our own choice, no source; the
 * tests named, over synthesised sounds and taps, show it right.
 */
final class OwnChoices {
  // BeatTimes: missedAndDoubledTapsAreShownAndDoNotChangeTheCount of BeatTimesTest

  /** Nearer to its neighbour than this share of the usual gap, a mark is doubled. */
  static final double DOUBLED = 0.45;

  // SpinTurns: LiveSessionTest

  /** Relative standard uncertainty of a speed that was only kept by the beat. */
  static final double BY_BEAT = 0.03;

  /** A count that differs from the planned pace by more than this share is asked about. */
  static final double FAR_OFF = 0.12;

  /** Standard uncertainty of turns timed by hand, where none is typed, s. */
  static final double TYPED_U_S = 0.5;

  // ClickFinder: ninetyNineOfAHundredAreFoundWithinFiveMillisecondsAtTenDecibels,
  // doubledClickIsSetAsideAndAKnockToo, silenceHasNoClicks of ClickFinderTest; in bins of 1 ms

  /** A click's energy is averaged over this many bins. */
  static final int RISE = 5;

  /** Bins before a click that it is compared with. */
  static final int BEFORE = 28;

  /** First bin after a click that it is compared with: its own ringing is over. */
  static final int AFTER_FROM = 20;

  /** Last bin after a click that it is compared with. */
  static final int AFTER_TO = 50;

  /** Two clicks are no closer than this many bins. */
  static final int APART = 60;

  /** Score above which a peak may be a click. */
  static final double FAINT = 0.35;

  /** Score above which a peak helps to find the usual gap. */
  static final double CLEAR = 1.2;

  /** Shortest usual gap looked for, s. */
  static final double SHORTEST_S = 0.15;

  /** Longest usual gap looked for, s. */
  static final double LONGEST_S = 6.5;

  // ClickChain: the same tests

  /** Gaps are counted in bins of this width, s. */
  static final double GAP_BIN_S = 0.01;

  /** Relative unevenness that a first chain allows. */
  static final double LOOSE = 0.12;

  /** Least relative unevenness that a second chain allows. */
  static final double TIGHTEST = 0.03;

  /** Times the spread of the first chain that the second allows. */
  static final double SPREADS = 3;

  /** Cost of a step without a click. */
  static final double MISS = 0.6;

  /** Cost of a click at the edge of the unevenness allowed. */
  static final double FAR = 2;

  /** Steps without a click after which a chain ends. */
  static final int MOST_MISSED = 12;

  /** A click gains no more than this for a chain. */
  static final double SURE = 4;

  /** Gain of a click for each unit of its score. */
  static final double WEIGHT = 1.6;

  /** Peaks after each that gaps are counted to. */
  static final int NEIGHBOURS = 400;

  private OwnChoices() {}
}
