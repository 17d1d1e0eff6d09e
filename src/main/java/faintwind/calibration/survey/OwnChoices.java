package faintwind.calibration.survey;

/**
 * How long one waits at a place, and what a speed sounds like. Each is our own choice, no source. A
 * test that is named fails where one of its group is doubled or halved; "none" means no quick test
 * of the package.
 */
final class OwnChoices {
  // Settling: oneWaitsThreeTimeConstantsAndAnAverage of SettlingTest; none shows MIDDLE_K

  /** Time constants that one waits at a place. */
  static final double CONSTANTS = 3;

  /** Difference at which the time constants are taken, K. */
  static final double MIDDLE_K = 15;

  // Stay: stayWaitsLongerWhereTheSpeedStillChanges of SurveyTest

  /** Share of a stay that is left out again while its halves do not agree. */
  static final double LEFT_OUT_STEP = 0.1;

  /** Until this share of it is. */
  static final double LEFT_OUT_MOST = 0.5;

  // SpeedTone: pitchRisesWithSpeedFromEndToEnd of SpeedToneTest,
  // aToneGoesOverTheCalibratedSpeeds of SettlingTest

  /** From the tone of the lowest speed to that of the highest. */
  static final double OCTAVES = 3;

  /** A lowest speed counts for no less, m/s. */
  static final double LEAST_M_S = 1e-3;

  private OwnChoices() {}
}
