package faintwind.calibration.beat;

/**
 * Limits by which beats are counted and clicks are heard. Each is our own choice, no source; the
 * tests named, over synthesised sounds and taps, show it right.
 */
final class OwnChoices {
  // BeatTimes: missedAndDoubledTapsAreShownAndDoNotChangeTheCount of BeatTimesTest

  /** Nearer to its neighbour than this share of the usual gap, a mark is doubled. */
  static final double DOUBLED = 0.45;

  /** Share of missing marks above which they are not counted. */
  static final double MOST_MISSED_SHARE = 0.35;

  /** Set-aside sounds are shown one by one up to this share of the clicks. */
  static final double FEW_SET_ASIDE = 0.1;

  // SteadyStretch: slowTurnsBeforeTheArmRunsSteadilyAreLeftOut of BeatTimesTest, ClickStudyTest

  /** Fewest marks of a steady stretch. */
  static final int LEAST_STEADY = 5;

  /** Least share of all marks that a steady stretch has. */
  static final double LEAST_STEADY_SHARE = 0.33;

  /** Most steps in a row without a mark that are bridged. */
  static final int MOST_BRIDGED = 12;

  /** Relative drift over a stretch above which it may be the end of a run-up. */
  static final double DRIFTS = 0.01;

  /** Relative difference from the pace that is no scatter. */
  static final double OFF_PACE = 0.004;

  /** The same in standard deviations of a gap. */
  static final double OFF_PACE_SPREADS = 4;

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
  static final double LONGEST_S = 40;

  // BeatPeriods, ClickChain: the same tests, and ClickStudyTest

  /** Gaps are counted in steps of this ratio. */
  static final double GAP_STEP = 0.0025;

  /** Half widths in such steps over which gaps count as alike: an even arm, an uneven hand. */
  static final int[] WIDTHS = {2, 12};

  /** Periods that are tried, for each width. */
  static final int CANDIDATES = 6;

  /** Relative unevenness of a step that is tried. */
  static final double[] SPREADS = {0.1, 0.05, 0.025, 0.012, 0.006, 0.003};

  /** The last chain may be this much more uneven than the likeliest, to keep its outliers. */
  static final double WIDER = 2;

  /** Evidence that a chain has at least. */
  static final double LEAST_EVIDENCE = 10;

  /** The same in multiples of what noises at random times come to. */
  static final double OVER_CHANCE = 1.3;

  /** Possible clicks in the middle of a recording that tell its period. */
  static final int LOOK_AT = 4000;

  /** Cost of a step without a click. */
  static final double MISS = 2;

  /** Steps without a click after which a chain ends. */
  static final int MOST_MISSED = 6;

  /** A click gains no more than this for a chain. */
  static final double SURE = 4;

  /** Gain of a click for each unit of its score. */
  static final double WEIGHT = 1.6;

  /** Gain taken off each, since a noise that comes by chance is seldom strong. */
  static final double UNSURE = 2;

  private OwnChoices() {}
}
