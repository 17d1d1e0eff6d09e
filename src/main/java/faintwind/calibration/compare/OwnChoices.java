package faintwind.calibration.compare;

import faintwind.calibration.run.Uncertain;

/**
 * What two calibrations are compared by, and what may have come between them. Each is our own
 * choice, no source. A test that is named fails where one of its group is doubled or halved; "none"
 * means no quick test of the package.
 */
final class OwnChoices {
  // LikelyCause: none by itself; moreHeatAtAKnownSupplyIsTheLogger and its neighbours in
  // ComparisonTest name the causes

  /** What a coat of dirt adds to the loss at speed over what it adds in still air. */
  static final double DIRT_AT_SPEED = 0.4;

  /** Two fits of one instrument may be apart by this much, relative. */
  static final double FIT_APART = 0.002;

  /** A supply on record may be off by this much, relative. */
  static final double SUPPLY_RECORDED = 0.004;

  // Traits, CompareCalibrations: none

  /** A difference of signal at which both losses are taken, K: it must be the same for both. */
  static final double DELTA_K = 20;

  /** Speeds at which two calibrations are compared. */
  static final int SPEEDS = 15;

  // Recheck: aRecheckHoldsTheReadingAgainstTheArm of ComparisonTest; none shows READ_SHARE

  /** Air carried round where no calibration shows it: 3 ± 2 %, common practice. */
  static final Uncertain CARRIED = Uncertain.of(0.03, 0.02);

  /** The reading is the mean over this last share of a spin. */
  static final double READ_SHARE = 0.5;

  private OwnChoices() {}
}
