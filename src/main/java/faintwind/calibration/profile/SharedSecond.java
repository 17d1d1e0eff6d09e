package faintwind.calibration.profile;

import java.util.OptionalDouble;

/**
 * Spreads readings that have the same whole second (or minute) over it: a logger may read more
 * often than its stamp can tell. As they come, and never beyond the next stamp; evenly once a
 * second was full. A stamp that has shown parts of a second is fine enough: readings of one such
 * time stay as they are. For one log.
 */
final class SharedSecond {
  private static final double WHOLE = 1e-9;

  private boolean fine;
  private OptionalDouble stamp_s = OptionalDouble.empty();
  private double base_s;
  private double last_s;
  private int count;
  private int beyond;
  private int usual = 1;
  private long spread;

  /**
   * The time of the next reading.
   *
   * @param time_s as it was stamped
   * @param tells_s what the stamp can tell apart, s
   */
  double place(double time_s, double tells_s) {
    fine |= Math.abs(time_s - Math.rint(time_s)) > WHOLE;
    if (fine || stamp_s.isEmpty() || time_s != stamp_s.getAsDouble()) {
      usual = Math.max(1, count);
      stamp_s = OptionalDouble.of(time_s);
      base_s = time_s;
      last_s = time_s;
      count = 1;
      beyond = 0;
      return time_s;
    }
    spread++;
    if (count < usual) {
      last_s = time_s + tells_s * count / usual;
      base_s = last_s;
    } else {
      beyond++;
      last_s = base_s + (time_s + tells_s - base_s) * beyond / (beyond + 1);
    }
    count++;
    return last_s;
  }

  /** Readings that had the stamp of the one before. */
  long spread() {
    return spread;
  }
}
