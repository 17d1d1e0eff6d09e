package faintwind.files.instrument;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/**
 * The time of an entry. A journal of some hundred lines has as many times, and the library's parser
 * for every form of ISO 8601 took a third of what such a line costs: the form that this program
 * writes is read directly, whatever else by the library, which stays the judge of what is a time.
 */
final class EntryTime {
  private static final String PATTERN = "0000-00-00T00:00";
  private static final String SECONDS = ":00";
  private static final String OFFSET = "+00:00";
  private static final int LARGEST_OFFSET_h = 17;

  private EntryTime() {}

  /**
   * The time that a text says.
   *
   * @throws java.time.format.DateTimeParseException where it says none
   */
  static OffsetDateTime parse(String text) {
    int end = PATTERN.length();
    if (!matches(text, 0, PATTERN)) {
      return OffsetDateTime.parse(text);
    }
    boolean seconds = matches(text, end, SECONDS);
    int offset = seconds ? end + SECONDS.length() : end;
    if (text.length() != offset + OFFSET.length() || !matches(text, offset, OFFSET)) {
      return OffsetDateTime.parse(text);
    }
    int hours = two(text, offset + 1);
    int minutes = two(text, offset + 4);
    if (hours > LARGEST_OFFSET_h || minutes > 59) {
      return OffsetDateTime.parse(text);
    }
    try {
      return OffsetDateTime.of(
          100 * two(text, 0) + two(text, 2),
          two(text, 5),
          two(text, 8),
          two(text, 11),
          two(text, 14),
          seconds ? two(text, end + 1) : 0,
          0,
          ZoneOffset.ofTotalSeconds(60 * (60 * hours + minutes)));
    } catch (DateTimeException noSuchDay) {
      return OffsetDateTime.parse(text);
    }
  }

  /** Whether there stands what a pattern says, a 0 of which is any digit. */
  private static boolean matches(String text, int from, String pattern) {
    if (text.length() < from + pattern.length()) {
      return false;
    }
    for (int i = 0; i < pattern.length(); i++) {
      char wanted = pattern.charAt(i);
      char found = text.charAt(from + i);
      if (wanted == '0' ? found < '0' || found > '9' : found != wanted) {
        return false;
      }
    }
    return true;
  }

  private static int two(String text, int at) {
    return 10 * (text.charAt(at) - '0') + text.charAt(at + 1) - '0';
  }
}
