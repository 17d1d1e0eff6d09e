package faintwind.calibration.profile;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a clock on the wall showed when the time of a recording was 0, so that what a person wrote
 * down by that clock can be found in the recording.
 *
 * @param zero local date and time at time 0; the date counts only where it is known
 * @param zone of the clock; UTC where the recording does not tell it
 * @param isDated whether the date is known
 * @param pattern in which the recording's dates are written; empty for none of its own
 */
public record WallClock(LocalDateTime zero, ZoneId zone, boolean isDated, String pattern) {
  private static final List<String> PATTERNS =
      List.of(
          "uuuu-M-d['T'][ ]H:mm[:ss]", "d.M.uuuu H:mm[:ss]", "d. M. uuuu H:mm[:ss]", "H:mm[:ss]");

  /** How far one clock may differ from the other. */
  private static final double SLACK_S = 60;

  /** What became of a text. */
  public enum Outcome {
    FOUND,
    /** It is no date or time of day. */
    NO_TIME,
    /** The clocks of the zone never showed it. */
    NEVER,
    /** The recording shows it more than once. */
    TWICE,
    /** It has a date and the recording has none. */
    NO_DATE
  }

  /**
   * The time of the recording at which the clock showed what a person wrote.
   *
   * @param time_s seconds; 0 unless it was found
   */
  public record Reading(Outcome outcome, double time_s) {
    private static Reading none(Outcome outcome) {
      return new Reading(outcome, 0);
    }
  }

  /** A clock that goes by the offset of a start. */
  public static WallClock of(OffsetDateTime start) {
    return new WallClock(start.toLocalDateTime(), start.getOffset(), true, "");
  }

  /**
   * Reads a time of day, or a date and time of day.
   *
   * @param text as a person wrote it
   * @param first_s first time of the recording
   * @param last_s its last
   */
  public Reading read(String text, double first_s, double last_s) {
    Optional<TemporalAccessor> read = parse(text.replace(',', '.').strip());
    if (read.isEmpty()) {
      return Reading.none(Outcome.NO_TIME);
    }
    if (!(read.get() instanceof LocalTime) && !isDated) {
      return Reading.none(Outcome.NO_DATE);
    }
    List<Double> all = candidates(read.get(), last_s);
    List<Double> inside =
        all.stream().filter(t -> t >= first_s - SLACK_S && t <= last_s + SLACK_S).toList();
    if (inside.size() > 1) {
      return Reading.none(Outcome.TWICE);
    }
    if (inside.size() == 1) {
      return new Reading(Outcome.FOUND, inside.get(0));
    }
    double middle_s = (first_s + last_s) / 2;
    return all.stream()
        .min((a, b) -> Double.compare(Math.abs(a - middle_s), Math.abs(b - middle_s)))
        .map(t -> new Reading(Outcome.FOUND, t))
        .orElseGet(() -> Reading.none(Outcome.NEVER));
  }

  private Optional<TemporalAccessor> parse(String text) {
    try {
      return Optional.of(OffsetDateTime.parse(text));
    } catch (DateTimeException e) {
      for (String one : PATTERNS) {
        // no such day as 30 February must pass for the month's last
        Optional<TemporalAccessor> read = parse(text, one, ResolverStyle.STRICT);
        if (read.isPresent()) {
          return read;
        }
      }
      // a logger's own pattern may have a year of an era, which the strict style takes for none
      return pattern.isEmpty() ? Optional.empty() : parse(text, pattern, ResolverStyle.SMART);
    }
  }

  private static Optional<TemporalAccessor> parse(
      String text, String pattern, ResolverStyle style) {
    try {
      return Optional.of(
          DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH)
              .withResolverStyle(style)
              .parseBest(text, LocalDateTime::from, LocalTime::from));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private List<Double> candidates(TemporalAccessor read, double last_s) {
    if (read instanceof OffsetDateTime at) {
      return List.of(after(at));
    }
    if (read instanceof LocalDateTime local) {
      return moments(local);
    }
    List<Double> all = new ArrayList<>();
    LocalDate begin = zero.toLocalDate().minusDays(1);
    long days = 2 + (long) Math.min(1000, Math.max(0, last_s) / 86_400) + 1;
    for (long day = 0; day < days; day++) {
      all.addAll(moments(begin.plusDays(day).atTime(LocalTime.from(read))));
    }
    return all;
  }

  private List<Double> moments(LocalDateTime local) {
    List<Double> all = new ArrayList<>();
    for (ZoneOffset offset : zone.getRules().getValidOffsets(local)) {
      all.add(after(local.atOffset(offset)));
    }
    return all;
  }

  private double after(OffsetDateTime at) {
    OffsetDateTime begin =
        zone instanceof ZoneOffset fixed
            ? zero.atOffset(fixed)
            : zero.atZone(zone).toOffsetDateTime();
    return Duration.between(begin, at).toMillis() / 1000.0;
  }
}
