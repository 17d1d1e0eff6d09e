package faintwind.record;

import java.util.Locale;

/** What a typed reading was judged to be, from best to worst. */
public enum ReadingVerdict {
  GOOD,
  /** Usable; look at it: repeat, wait for the cure, dry. */
  DOUBTFUL,
  /** Nothing gets past. */
  STOP;

  /** The word in files and bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
