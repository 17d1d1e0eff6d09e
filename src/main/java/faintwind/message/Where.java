package faintwind.message;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A place in an input: file, line, column, step or run. Every part is optional.
 *
 * @param file file name as the person gave it
 * @param line line number in the file, from 1
 * @param column column name, or option or field name
 * @param step id of a checklist step
 * @param run name of a calibration run
 */
public record Where(
    Optional<String> file,
    OptionalInt line,
    Optional<String> column,
    Optional<String> step,
    Optional<String> run) {

  public static final Where NOWHERE =
      new Where(
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  public static Where file(String file) {
    return NOWHERE.inFile(file);
  }

  public static Where run(String run) {
    return NOWHERE.inRun(run);
  }

  public static Where step(String step) {
    return new Where(
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.of(step),
        Optional.empty());
  }

  public Where inFile(String name) {
    return new Where(Optional.of(name), line, column, step, run);
  }

  public Where atLine(int number) {
    return new Where(file, OptionalInt.of(number), column, step, run);
  }

  public Where atColumn(String name) {
    return new Where(file, line, Optional.of(name), step, run);
  }

  public Where inRun(String name) {
    return new Where(file, line, column, step, Optional.of(name));
  }
}
