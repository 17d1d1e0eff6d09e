package faintwind.device;

import java.io.IOException;

/** A packet of another sender than the one that was kept to; the next read goes on. */
final class OtherSenderException extends IOException {
  private static final long serialVersionUID = 1;

  private final String other;
  private final String kept;
  private final boolean isTaken;

  /**
   * Somebody else sends.
   *
   * @param isTaken whether the other is kept to from now on
   */
  OtherSenderException(String other, String kept, boolean isTaken) {
    super(other + " is not " + kept);
    this.other = other;
    this.kept = kept;
    this.isTaken = isTaken;
  }

  boolean isTaken() {
    return isTaken;
  }

  String other() {
    return other;
  }

  String kept() {
    return kept;
  }
}
