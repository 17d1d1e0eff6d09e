package faintwind.calibration.bench;

/**
 * What is read from a record on the bench. Each is our own choice, no source; the tests named, over
 * made-up records, show it right.
 */
final class OwnChoices {
  // QuietRecord: meanDriftAndScatterAreThoseThatWerePutIn, aRecordTooShortIsRefusedInWords,
  // anInputThatRunsToTheEndOfItsRangeIsSaid of BenchRecordTest

  /** A record must have as many rows. */
  static final int LEAST_ROWS = 40;

  /** Rows alike that show an input at its end. */
  static final int STUCK_ROWS = 10;

  /** How often the scatter the drift must make over the record to be called one. */
  static final double WANDERS = 8;

  // PickUp: mainsPickUpIsFoundWhereItFoldsTo, anOscillationElsewhereIsNotCalledMains,
  // whiteNoiseShowsNoMainsAndNoCorner of BenchRecordTest

  /** Chance that noise alone makes a line as high, over all lines: one in a thousand. */
  static final double CHANCE = 1e-3;

  /** Harmonics of the mains that are looked for. */
  static final int HARMONICS = 3;

  // NoiseFloor: noiseThatGrowsTowardsLowFrequenciesHasACorner, whiteNoiseShowsNoMainsAndNoCorner of
  // BenchRecordTest

  /** A 1/f part must raise the log likelihood by this much: one in a hundred by chance. */
  static final double STANDS_OUT = 3.3;

  /** Corners tried a decade. */
  static final int STEPS_A_DECADE = 12;

  // HeaterOn: theHeaterIsFoundAndItsRiseRead, aHeaterThatStayedOffChangesNothing of BenchRecordTest

  /** Level before switching on, at least this long, s. */
  static final double LEAST_BEFORE_S = 10;

  /** The level after is the mean of this long, s. */
  static final double END_S = 5;

  /** Moments of switching on that are tried. */
  static final int CANDIDATES = 400;

  // BreathDrop: aBreathIsFoundWithinItsMinute of BenchRecordTest

  /** The fall is looked for within this long, s. */
  static final double BREATH_WITHIN_S = 60;

  /** In means of this long, s. */
  static final double BREATH_AVERAGE_S = 5;

  /** A record is at least this long, s. */
  static final double BREATH_LEAST_S = 60;

  // JarCheck: airCounts of JarCheckTest

  /** Air temperatures between which the band is drawn, K. */
  static final double JAR_STEP_K = 5;

  private OwnChoices() {}
}
