package faintwind.message;

import java.util.List;

/**
 * One thing wrong with an input, or one thing a person should know. The words are in the message
 * bundle: {@code ID} says what was found, {@code ID.expected} what was expected (optional), {@code
 * ID.todo} what to do next (optional). In all three, {@code {0}} is {@link #found()} and {@code
 * {1}}… are {@link #details()}.
 *
 * @param id bundle key, such as {@code runs.radius-not-positive}
 * @param severity warning or error
 * @param where the place
 * @param found what stood there, as it stood there; empty where nothing did
 * @param details further values the words name
 */
public record Problem(
    String id, Severity severity, Where where, String found, List<String> details) {

  public Problem {
    details = List.copyOf(details);
  }

  public static Problem error(String id, Where where, String found, String... details) {
    return new Problem(id, Severity.ERROR, where, found, List.of(details));
  }

  public static Problem warning(String id, Where where, String found, String... details) {
    return new Problem(id, Severity.WARNING, where, found, List.of(details));
  }

  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** The same as an error or as a warning. */
  public Problem as(Severity other) {
    return new Problem(id, other, where, found, details);
  }

  /** The same at another place. */
  public Problem at(Where other) {
    return new Problem(id, severity, other, found, details);
  }
}
