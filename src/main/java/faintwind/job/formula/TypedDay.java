package faintwind.job.formula;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;

/** Reads when something was measured, as a person types it. */
public final class TypedDay {
  private static final int NOON_H = 12;
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  private TypedDay() {}

  /**
   * A day such as 2026-11-28, which counts from its noon, or a day with its time such as 2026-11-28
   * 14:30; with an offset from UTC where one is typed, else in the zone of the place.
   *
   * @param now in the zone of the place; what is later has not been measured
   */
  public static Checked<OffsetDateTime> read(String typed, ZonedDateTime now) {
    String text = typed.strip().replace('T', ' ');
    Checked<OffsetDateTime> read = parsed(text, now);
    return read.then(
        at ->
            at.isAfter(now.toOffsetDateTime())
                ? Checked.refused(Problem.error("measured.later", Where.NOWHERE, typed))
                : Checked.ok(at));
  }

  private static Checked<OffsetDateTime> parsed(String text, ZonedDateTime now) {
    try {
      if (text.length() == "2026-11-28".length()) {
        LocalDateTime noon = LocalDate.parse(text).atTime(NOON_H, 0);
        // on the day itself noon may be still to come
        LocalDateTime at =
            noon.toLocalDate().equals(now.toLocalDate()) && noon.isAfter(now.toLocalDateTime())
                ? now.toLocalDateTime()
                : noon;
        return Checked.ok(at.atZone(now.getZone()).toOffsetDateTime());
      }
      if (text.length() == "2026-11-28 14:30".length()) {
        LocalDateTime at = LocalDateTime.parse(text, MINUTE);
        return Checked.ok(at.atZone(now.getZone()).toOffsetDateTime());
      }
      return Checked.ok(OffsetDateTime.parse(text.replace(' ', 'T')));
    } catch (DateTimeParseException e) {
      return Checked.refused(Problem.error("measured.no-day", Where.NOWHERE, text));
    }
  }
}
