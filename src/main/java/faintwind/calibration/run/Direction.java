package faintwind.calibration.run;

import java.util.Locale;

/** Which way the arm turned, seen from above. */
public enum Direction {
  CW,
  CCW;

  /** The word in the runs table. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
