package faintwind.calibration.run;

import java.util.Locale;

/** What happened to the balls during a run. */
public enum RunKind {
  /** Arm at rest; the warm-up belongs here. */
  STILL,
  /** Arm turned at one speed from spin start to spin stop. */
  SPIN,
  /** A steady flow whose speed another instrument gave. */
  REFERENCE,
  /** Heater off: the chain's offset. */
  ZERO;

  /** The word in the runs table. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
