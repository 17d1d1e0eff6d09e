package faintwind.calibration.run;

import java.util.Optional;

/**
 * What is known before the runs are looked at.
 *
 * @param build what is on record of the build
 * @param arm what earlier calibrations showed of the arm
 * @param others what other instruments of the same class showed
 */
public record KnownBefore(Optional<BuildFacts> build, Optional<ArmKnown> arm, ClassKnown others) {
  /** Nothing is known. */
  public static final KnownBefore NOTHING = new KnownBefore(Optional.empty(), Optional.empty());

  /** Of an instrument that shares nothing with others. */
  public KnownBefore(Optional<BuildFacts> build, Optional<ArmKnown> arm) {
    this(build, arm, ClassKnown.NOTHING);
  }

  /** The same of an instrument of a class. */
  public KnownBefore among(ClassKnown shown) {
    return new KnownBefore(build, arm, shown);
  }

  /** Whether neither earlier sessions nor other instruments told of the arm. */
  public boolean tellsNothingOfTheArm() {
    return arm.isEmpty() && others.expected().isEmpty();
  }
}
