package faintwind.calibration.profile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the times of one log, in seconds. A plain number keeps its own origin; a date or a time of
 * day counts from the first one read, and goes on past midnight. Times without an offset are those
 * of the column's zone, see {@link LocalMoment}; without a zone they are taken as they stand, and
 * where clocks are set back in autumn, the time goes back.
 */
final class LineTime {
  private static final Pattern CLOCK =
      Pattern.compile("(\\d{1,4}):([0-5]\\d)(?::([0-5]\\d)(?:[.,](\\d{1,9}))?)?");
  private static final Pattern SECONDS = Pattern.compile(":\\d\\d:\\d\\d");
  private static final double DAY_S = 86_400;
  private static final double MINUTE_S = 60;

  private final TimeColumn column;
  private final char decimalMark;
  private final Optional<DateTimeFormatter> pattern;
  private final Unwrap turns;
  private final Optional<LocalMoment> local;
  private Optional<WallClock> clock = Optional.empty();
  private Optional<String> stamp = Optional.empty();
  private Optional<String> note = Optional.empty();
  private OptionalDouble origin_s = OptionalDouble.empty();
  private Optional<OffsetDateTime> start = Optional.empty();

  /**
   * Times in the form of a column.
   *
   * @throws IllegalArgumentException where the pattern is none; see {@link TimeColumn#formatter}
   */
  LineTime(TimeColumn column, char decimalMark) {
    this.column = column;
    this.decimalMark = decimalMark;
    this.pattern =
        column.pattern().isEmpty()
            ? Optional.empty()
            : Optional.of(TimeColumn.formatter(column.pattern()));
    this.local = column.zone().map(LocalMoment::new);
    this.turns = new Unwrap(column.form().isNumber() ? column.wrapsAt().orElse(0) : DAY_S);
  }

  /** When the origin of the times was, where the times tell it. */
  Optional<OffsetDateTime> start() {
    return start;
  }

  /** What a clock on the wall showed at the origin, where the times tell it. */
  Optional<WallClock> clock() {
    return clock;
  }

  /** Date and time of the last reading by ISO 8601. */
  Optional<String> stamp() {
    return stamp;
  }

  /** Message id for what should be known of the last reading. */
  Optional<String> note() {
    return note;
  }

  /** What the stamp just read can tell apart at least, s. */
  double tells_s(String text) {
    return switch (column.form()) {
      case CLOCK, ELAPSED, ISO -> SECONDS.matcher(text).find() ? 1 : MINUTE_S;
      case PATTERN -> column.pattern().contains("s") ? 1 : MINUTE_S;
      default -> Math.max(1, column.form().unit_s());
    };
  }

  /** Seconds; empty where the text has not the form. */
  OptionalDouble read(String text) {
    note = Optional.empty();
    return switch (column.form()) {
      case RECEIVED -> OptionalDouble.empty();
      case ISO -> iso(text);
      case CLOCK -> fromOrigin(clock(text, DAY_S));
      case ELAPSED -> clock(text, Double.POSITIVE_INFINITY);
      case PATTERN -> byPattern(text);
      case DAYS, HOURS, MINUTES, SECONDS, MILLISECONDS, MICROSECONDS -> number(text);
    };
  }

  private OptionalDouble number(String text) {
    OptionalDouble read = LineNumber.parse(text, decimalMark);
    if (read.isEmpty()) {
      return read;
    }
    double value = read.getAsDouble();
    double counted = column.wrapsAt().isPresent() ? turns.next(value) : value;
    return OptionalDouble.of(counted * column.form().unit_s());
  }

  private OptionalDouble iso(String text) {
    String plain = text.replace(',', '.').replaceFirst("^(\\S+) +(?=\\d)", "$1T");
    try {
      return date(
          DateTimeFormatter.ISO_DATE_TIME.parseBest(
              plain, OffsetDateTime::from, LocalDateTime::from));
    } catch (DateTimeException e) {
      return OptionalDouble.empty();
    }
  }

  private OptionalDouble byPattern(String text) {
    try {
      TemporalAccessor read =
          pattern
              .orElseThrow()
              .parseBest(
                  text,
                  OffsetDateTime::from,
                  LocalDateTime::from,
                  LocalTime::from,
                  LocalDate::from);
      if (read instanceof LocalTime time) {
        return fromOrigin(OptionalDouble.of(time.toNanoOfDay() / 1e9));
      }
      return read instanceof LocalDate ? OptionalDouble.empty() : date(read);
    } catch (DateTimeException e) {
      return OptionalDouble.empty();
    }
  }

  private OptionalDouble date(TemporalAccessor read) {
    boolean told = read instanceof OffsetDateTime || local.isPresent();
    Optional<OffsetDateTime> moment =
        read instanceof OffsetDateTime known
            ? Optional.of(known)
            : moment(LocalDateTime.from(read));
    if (moment.isEmpty()) {
      note = Optional.of("import.time-skipped");
      return OptionalDouble.empty();
    }
    OffsetDateTime at = moment.get();
    if (origin_s.isEmpty()) {
      start = told ? Optional.of(at) : Optional.empty();
      clock =
          Optional.of(
              new WallClock(
                  at.toLocalDateTime(),
                  column.zone().orElse(at.getOffset()),
                  true,
                  column.pattern()));
      note = note.or(() -> told ? Optional.empty() : Optional.of("import.no-zone"));
    }
    stamp =
        Optional.of(
            told
                ? DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at)
                : DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(at));
    return fromOrigin(at);
  }

  /** The moment of a local time; without a zone as if the clocks never changed. */
  private Optional<OffsetDateTime> moment(LocalDateTime read) {
    if (local.isEmpty()) {
      return Optional.of(read.atOffset(ZoneOffset.UTC));
    }
    if (origin_s.isEmpty() && local.get().comesTwice(read)) {
      note = Optional.of("import.hour-doubled");
    }
    return local.get().of(read);
  }

  private OptionalDouble fromOrigin(OffsetDateTime at) {
    double whole_s = at.toEpochSecond();
    if (origin_s.isEmpty()) {
      origin_s = OptionalDouble.of(whole_s + at.getNano() / 1e9);
    }
    // whole seconds first: a date in seconds leaves few digits for the fraction
    double first_s = Math.floor(origin_s.getAsDouble());
    return OptionalDouble.of(
        (whole_s - first_s) + (at.getNano() / 1e9 - (origin_s.getAsDouble() - first_s)));
  }

  private OptionalDouble fromOrigin(OptionalDouble ofDay_s) {
    if (ofDay_s.isEmpty()) {
      return ofDay_s;
    }
    double counted_s = turns.next(ofDay_s.getAsDouble());
    if (origin_s.isEmpty()) {
      origin_s = OptionalDouble.of(counted_s);
      LocalTime zero = LocalTime.ofNanoOfDay(Math.round(counted_s * 1000) * 1_000_000);
      clock = Optional.of(new WallClock(LocalDate.EPOCH.atTime(zero), ZoneOffset.UTC, false, ""));
    }
    return OptionalDouble.of(counted_s - origin_s.getAsDouble());
  }

  private static OptionalDouble clock(String text, double below_s) {
    Matcher m = CLOCK.matcher(text);
    if (!m.matches()) {
      return OptionalDouble.empty();
    }
    double second = m.group(3) == null ? 0 : Double.parseDouble(m.group(3));
    double part = m.group(4) == null ? 0 : Double.parseDouble("0." + m.group(4));
    double time_s =
        3600 * Double.parseDouble(m.group(1)) + 60 * Double.parseDouble(m.group(2)) + second + part;
    return time_s < below_s ? OptionalDouble.of(time_s) : OptionalDouble.empty();
  }
}
