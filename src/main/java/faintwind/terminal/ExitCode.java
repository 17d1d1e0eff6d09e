package faintwind.terminal;

import faintwind.message.Problem;
import java.util.List;

/** What the process says to the shell. */
public enum ExitCode {
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

  private static final List<String> NOT_THERE =
      List.of("file.missing", "world.missing", "folder.in-use", "live.nothing-arrived");

  /**
   * Of a refusal: where all that is wrong is that a named input is not there, or that nothing came,
   * the world failed.
   */
  public static ExitCode of(List<Problem> problems) {
    boolean notThere =
        problems.stream().filter(Problem::isError).map(Problem::id).allMatch(NOT_THERE::contains);
    return notThere ? WORLD : REFUSED;
  }

  public int number() {
    return switch (this) {
      case DONE -> 0;
      case WORLD -> 1;
      case USAGE -> 2;
      case REFUSED -> 3;
      case LIMIT -> 4;
    };
  }
}
