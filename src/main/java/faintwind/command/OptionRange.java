package faintwind.command;

import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Judges the number of an option by its field, in the words of the command line. */
public final class OptionRange {
  private OptionRange() {}

  /** What is wrong with a number, if anything; one that was not given is right. */
  public static Optional<Problem> trouble(String option, @Nullable Number value, Field field) {
    return value == null || field.allows(value.doubleValue())
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                "usage.range", Where.NOWHERE, String.valueOf(value), option, field.allowed()));
  }
}
