package faintwind.guide.checklist;

/** What a step can show beside its words, worked out from the design in force: a closed list. */
public enum Card {
  /** Holes, depths, drill speed and pecks, with both balls drawn. */
  DRILLING,
  /** Masses to expect, and what a wrong one means. */
  WEIGHING,
  /** What a plater needs to know. */
  PLATING_ORDER,
  /** Current, charge, time, thickness and hydrogen, to be played with. */
  PLATING_BATH,
  /** The chain drawn: supply, heater, thermocouple, joints, input. */
  WIRING,
  /** The arm from above, and what it has to hold. */
  ARM
}
