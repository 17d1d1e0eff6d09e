package faintwind.message;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The form that {@link DateText} and the words of problems share. */
record DateForm(Locale language) {
  static final String DAY = "d MMMM uuuu";
  static final String MINUTE = DAY + ", HH:mm";

  String text(String pattern, TemporalAccessor at) {
    return DateTimeFormatter.ofPattern(pattern, language).format(at);
  }

  /** A day and minute in this form or as in a file; empty where it is neither. */
  Optional<LocalDateTime> read(String typed) {
    return Stream.of(MINUTE, "uuuu-MM-dd HH:mm", "uuuu-MM-dd'T'HH:mm")
        .flatMap(pattern -> read(typed, pattern).stream())
        .findFirst();
  }

  private Optional<LocalDateTime> read(String typed, String pattern) {
    DateTimeFormatter form =
        new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .appendPattern(pattern)
            .toFormatter(language)
            .withResolverStyle(ResolverStyle.STRICT);
    try {
      return Optional.of(LocalDateTime.parse(typed, form));
    } catch (DateTimeParseException another) {
      return Optional.empty();
    }
  }

  String zoned(OffsetDateTime at) {
    return text(MINUTE, at) + " " + zone(at);
  }

  static String zone(OffsetDateTime at) {
    return DateTimeFormatter.ofPattern("'UTC'x", Locale.ROOT).format(at);
  }
}
