package faintwind.guide.checklist;

/** What a reading is in a recording of the logger, so that it need not be typed. */
public enum Recorded {
  /** Mean of the signal at the thermocouple, heater off. */
  ZERO,
  /** Its standard deviation about a straight line. */
  SCATTER,
  /** Its change from before the heater is switched on to the end. */
  RISE,
  /** Its change from before a breath to the lowest within a minute. */
  DROP,
  /** Its level at rest, heater on, in kelvin. */
  LEVEL;
}
