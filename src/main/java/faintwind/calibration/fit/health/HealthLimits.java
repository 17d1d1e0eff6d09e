package faintwind.calibration.fit.health;

/**
 * From where on a run counts as not healthy, all in one place. Own choices, no source: set so that
 * the runs of healthy virtual builds and benches, draughty classroom gear among them, lie inside
 * (their means at rest scatter by 0.2 to 1.3 %, single blocks by up to 3 %).
 */
public final class HealthLimits {
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

  /** A lasting change of the speeds. */
  public static final double SPEED_STEP = 0.04;

  /** Below this share of the heat the heater was off. */
  static final double HEATER_OFF = 0.35;

  private HealthLimits() {}
}
