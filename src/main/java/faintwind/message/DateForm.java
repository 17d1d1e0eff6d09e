package faintwind.message;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** The form that {@link DateText} and the words of problems share. */
record DateForm(Locale language) {
  static final String DAY = "d MMMM uuuu";
  static final String MINUTE = DAY + ", HH:mm";

  String text(String pattern, TemporalAccessor at) {
    return DateTimeFormatter.ofPattern(pattern, language).format(at);
  }

  String zoned(OffsetDateTime at) {
    return text(MINUTE, at) + " " + zone(at);
  }

  static String zone(OffsetDateTime at) {
    return DateTimeFormatter.ofPattern("'UTC'x", Locale.ROOT).format(at);
  }
}
