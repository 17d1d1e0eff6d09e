package faintwind.calibration.live;

import java.util.Arrays;
import java.util.Optional;

/** Why a live record has a break. The word stands in the file's column {@code gap}. */
public enum LiveGap {
  /** The connection was cut and has come back. */
  CUT("cut"),
  /** A line could not be read. */
  GARBLED("garbled"),
  /** The source was silent for far longer than its usual step. */
  SILENT("silent"),
  /** The logger's time went back: it was started again. */
  RESTARTED("restarted"),
  /** The logger's time jumped ahead of the time that passed. */
  JUMPED("jumped"),
  /** The growing file was replaced or shortened. */
  REPLACED("replaced"),
  /** No break, but a value of the row could not be and was left out. */
  IMPOSSIBLE("impossible");

  private final String word;

  LiveGap(String word) {
    this.word = word;
  }

  /** The break that a word in a file says; empty for none. */
  public static Optional<LiveGap> of(String word) {
    return Arrays.stream(values()).filter(gap -> gap.word.equals(word)).findFirst();
  }

  /** The word in the file. */
  public String word() {
    return word;
  }
}
