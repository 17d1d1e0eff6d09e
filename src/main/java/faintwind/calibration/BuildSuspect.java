package faintwind.calibration;

import faintwind.message.Field;

/** What may be other than the record of a build says, where its fit does not meet it. */
public enum BuildSuspect {
  SUPPLY,
  RESISTOR,
  /** A ball of another size. */
  BALL_SIZE,
  /** A ball of another metal, or one weighed wrongly. */
  METAL,
  GLUE,
  LEADS,
  /** Another thermocouple type or gain than the chain says. */
  THERMOCOUPLE,
  /** Runs of another instrument. */
  OTHER_RUNS;

  /** The word in files and bundle keys. */
  public String word() {
    return Field.word(this);
  }
}
