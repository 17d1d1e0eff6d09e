package faintwind;

/** What the process says to the shell. */
enum ExitCode {
  /** Done. */
  DONE,
  /** The world failed: disk, permission, port. Nothing half-written. */
  WORLD,
  /** The command line is wrong. */
  USAGE,
  /** An input is refused, or the data contradict the physics. Nothing written. */
  REFUSED,
  /** Done, but a stated limit was not met, or runs contradict each other. */
  LIMIT;

  int number() {
    return switch (this) {
      case DONE -> 0;
      case WORLD -> 1;
      case USAGE -> 2;
      case REFUSED -> 3;
      case LIMIT -> 4;
    };
  }
}
