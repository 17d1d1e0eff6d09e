package faintwind.physics.sheet;

/** What to make of a quantity of the design; the words are under {@code design-verdict.} */
public enum DesignVerdict {
  /** As it should be. */
  GOOD,
  /** It works; something better is near. */
  IMPROVE,
  /** It cannot work, or is not safe. */
  STOP,
  /** A plain number with nothing to judge. */
  PLAIN
}
