package faintwind.calibration.pool;

/**
 * What instruments of a class share, and from where one stands out (the spreads between them:
 * {@link Shared}). Each is our own choice, no source. A test that is named fails where one of its
 * group is doubled or halved; "none" means no quick test of the package.
 */
final class OwnChoices {
  // Population: spreadIsLearned, faultyOneIsNamedAndDoesNotMoveTheOthers of PoolTest

  /** The usual spread counts as so many instruments. */
  static final double WORTH = 2;

  /** Degrees of freedom of Student's t. */
  static final double FREEDOM = 4;

  // StandsOut, Pool: faultyOneIsNamedAndDoesNotMoveTheOthers of PoolTest; none shows
  // SETTLED

  /**
   * Standard deviations from which one stands out: one class of six in a hundred or so has one by
   * chance.
   */
  static final double STANDS_OUT = 3.5;

  /**
   * Of the shared unknowns, how many one lesson settles by itself: sound pairs of made-up classes
   * (80000 to 80003, 83002, 83003) pay about so much to agree with the others.
   */
  static final int SETTLED = 2;

  // SameClass: oneDesignOnOneArmShares of SameClassTest; none shows SAME_PART

  /** Two radii on one hole of an arm agree to a hundredth. */
  static final double SAME_RADIUS = 0.01;

  /** Two numbers of one design: the same parts' file says both. */
  static final double SAME_PART = 1e-3;

  private OwnChoices() {}
}
