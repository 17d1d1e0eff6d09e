package faintwind.calibration.run;

import java.util.Optional;

/**
 * What is known before the runs are looked at.
 *
 * @param build what is on record of the build
 * @param arm what earlier calibrations showed of the arm
 */
public record KnownBefore(Optional<BuildFacts> build, Optional<ArmKnown> arm) {
  /** Nothing is known. */
  public static final KnownBefore NOTHING = new KnownBefore(Optional.empty(), Optional.empty());
}
