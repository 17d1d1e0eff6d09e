package faintwind.guide;

import java.util.Locale;

/** Where a step stands. */
public enum StepState {
  /** May be started. */
  READY,
  /** Open now. */
  DOING,
  /** A clock runs. */
  WAITING,
  /** Finished or usable; look at it. */
  NEEDS_ATTENTION,
  /** Nothing gets past: something before it is missing, or a reading says stop. */
  BLOCKED,
  DONE,
  /** Done, and an earlier entry of it was replaced. */
  CORRECTED,
  /** An answer made it needless. */
  NOT_NEEDED;

  /** The word in bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether nothing more is to be done. */
  public boolean settled() {
    return this == DONE || this == CORRECTED || this == NOT_NEEDED;
  }
}
