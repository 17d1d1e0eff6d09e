package faintwind.message;

/** How much a {@link Problem} weighs. */
public enum Severity {
  /** The result stands; a person should know this. */
  WARNING,
  /** The input is refused. */
  ERROR
}
