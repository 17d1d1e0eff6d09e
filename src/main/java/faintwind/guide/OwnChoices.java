package faintwind.guide;

import java.time.Duration;

/**
 * What counts as a name, a reason, a clock that fits, a number that changed. Each is our own
 * choice, no source. A test that is named fails where one of its group is doubled or halved; "none"
 * means no quick test of the package.
 */
final class OwnChoices {
  // Waivers: noReason, noName of GateEvidenceTest; aWaiverNeedsAttentionAndLetsOthersGoOn of
  // ProgressTest

  /** Fewest letters of a name. */
  static final int NAME_LETTERS = 2;

  /** Fewest letters of a reason. */
  static final int REASON_LETTERS = 10;

  /** Its fewest words. */
  static final int REASON_WORDS = 2;

  /** Its fewest different letters: "xxxx xxxxxxxx" has the letters of a reason and says nothing. */
  static final int REASON_KINDS = 5;

  // ClockEvidence, Due, Today: aYearAfterItWasMeasured of DueTest; none shows SILENCE and
  // UNKNOWN_min

  /**
   * A silence longer than this around the end of a clock is asked about. A cure takes days; a wrong
   * year is the usual slip.
   */
  static final Duration SILENCE = Duration.ofDays(60);

  /** A calibration counts for so many years. */
  static final int YEARS = 1;

  /** Time of a step that says nothing of its time, min. */
  static final int UNKNOWN_min = 30;

  // Doubts: none; aChangedDesignDoubtsExactlyTheStepsThatUsedTheChangedNumbers of ProgressTest
  // is about larger changes

  /** Numbers of a design within this share of one another are the same. */
  static final double SAME_NUMBER = 1e-3;

  /** The sizes of the arm hold margins of two: a tenth more is none of them. */
  static final double ARM_MORE = 0.1;

  private OwnChoices() {}
}
