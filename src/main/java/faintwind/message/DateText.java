package faintwind.message;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;

/**
 * Dates and times as people read them in the window, on pages and in the terminal: "1 November
 * 2026, 17:53". The one place that writes them; ISO 8601 is for files, tables for machines and
 * JSON. Names of months follow the language of the words, not the locale of the numbers.
 */
public final class DateText {
  private DateText() {}

  /** The day, such as "1 November 2026". */
  public static String day(Messages words, TemporalAccessor at) {
    return text(words, DateForm.DAY, at);
  }

  /** The day and the minute, such as "1 November 2026, 17:53". */
  public static String minute(Messages words, TemporalAccessor at) {
    return text(words, DateForm.MINUTE, at);
  }

  /** The day and the second, such as "1 November 2026, 17:53:05". */
  public static String second(Messages words, TemporalAccessor at) {
    return text(words, DateForm.MINUTE + ":ss", at);
  }

  /** The minute and its zone, for what may be read elsewhere: "1 November 2026, 17:53 UTC+01". */
  public static String zoned(Messages words, OffsetDateTime at) {
    return new DateForm(words.locale()).zoned(at);
  }

  /** The zone alone, such as "UTC+01" or "UTC+0530". */
  public static String zone(OffsetDateTime at) {
    return DateForm.zone(at);
  }

  /** The minute alone, such as "17:53", where the day is said beside it. */
  public static String clock(TemporalAccessor at) {
    return DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(at);
  }

  /** The minute alone on the day that it is now, else with its day. */
  public static String near(Messages words, OffsetDateTime at, OffsetDateTime now) {
    return at.toLocalDate().equals(now.toLocalDate()) ? clock(at) : minute(words, at);
  }

  /** The head of a column of a week, such as "Sun 1": the week says month and year. */
  public static String weekday(Messages words, LocalDate at) {
    return text(words, "EEE d", at);
  }

  /**
   * A day and minute as a person types it: as it is written here, or such as "2026-11-01 17:53".
   * Empty where it is neither, or no day of the calendar.
   */
  public static Optional<LocalDateTime> read(Messages words, String typed) {
    return new DateForm(words.locale()).read(typed.strip());
  }

  private static String text(Messages words, String pattern, TemporalAccessor at) {
    return new DateForm(words.locale()).text(pattern, at);
  }
}
