package faintwind.calibration.profile;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the time stands in a line.
 *
 * @param form its form
 * @param column which; empty only for {@link TimeForm#RECEIVED}
 * @param date a column of its own for the date, put before the time with a blank between
 * @param pattern for {@link TimeForm#PATTERN}: letters of Java's DateTimeFormatter, such as {@code
 *     dd.MM.uuuu HH:mm:ss}; empty otherwise
 * @param wrapsAt where a plain number starts again at 0: the size of its whole turn
 * @param zone whose clock the dates without an offset were read from
 */
public record TimeColumn(
    TimeForm form,
    Optional<ColumnRef> column,
    Optional<ColumnRef> date,
    String pattern,
    OptionalDouble wrapsAt,
    Optional<ZoneId> zone) {
  public TimeColumn {
    if (column.isEmpty() != (form == TimeForm.RECEIVED)) {
      throw new IllegalArgumentException("form = " + form + ", column = " + column);
    }
    if (form == TimeForm.PATTERN == pattern.isEmpty()) {
      throw new IllegalArgumentException("form = " + form + ", pattern = " + pattern);
    }
  }

  /** Seconds as a plain number. */
  public static TimeColumn seconds(ColumnRef column) {
    return of(TimeForm.SECONDS, column);
  }

  /** A form that needs nothing beside its column. */
  public static TimeColumn of(TimeForm form, ColumnRef column) {
    return new TimeColumn(
        form, Optional.of(column), Optional.empty(), "", OptionalDouble.empty(), Optional.empty());
  }

  /**
   * The form that a pattern stands for.
   *
   * @throws IllegalArgumentException where it is none
   */
  static DateTimeFormatter formatter(String pattern) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .toFormatter(Locale.ENGLISH);
  }

  /** Whether a pattern's letters stand for anything. */
  public static boolean isPattern(String pattern) {
    try {
      formatter(pattern);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
