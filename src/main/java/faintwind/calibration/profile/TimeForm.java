package faintwind.calibration.profile;

/** Forms in which a logger may write the time. */
public enum TimeForm {
  DAYS("d", 86_400),
  HOURS("h", 3600),
  MINUTES("min", 60),
  SECONDS("s", 1),
  MILLISECONDS("ms", 1e-3),
  MICROSECONDS("us", 1e-6),
  /** ISO 8601 date and time, with or without an offset, with T or a blank between. */
  ISO("iso", 0),
  /** Time of day hh:mm:ss or hh:mm, also past midnight. */
  CLOCK("clock", 0),
  /** Hours, minutes and seconds since some start: hh:mm:ss, beyond 24 h too. */
  ELAPSED("elapsed", 0),
  /** Date and time by a pattern. */
  PATTERN("pattern", 0),
  /** No time in the line: the time of its arrival counts. */
  RECEIVED("received", 0);

  private final String word;
  private final double second;

  TimeForm(String word, double second) {
    this.word = word;
    this.second = second;
  }

  /** The word in a profile. */
  public String word() {
    return word;
  }

  /** Whether it is a plain number. */
  public boolean isNumber() {
    return second > 0;
  }

  /** Whether it can carry a date. */
  public boolean isDated() {
    return this == ISO || this == PATTERN;
  }

  /** Seconds in one unit of a plain number. */
  double unit_s() {
    return second;
  }
}
