package faintwind.guide.checklist;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * A clock of a step, as a pure function of when it was started, how long it runs and what time it
 * is: it runs on while the program is closed. Where the computer's clock was set back to before the
 * start, nothing is known and the clock counts as not ended. Where the time may have leapt, an end
 * is not believed until a person says that the time is right.
 *
 * @param start when it was started
 * @param duration_s how long it runs, s, not negative
 * @param now the time
 * @param trust whether the time between start and now can be believed
 */
public record StepClock(OffsetDateTime start, double duration_s, OffsetDateTime now, Trust trust) {

  public StepClock {
    if (!(duration_s >= 0)) {
      throw new IllegalArgumentException("duration_s = " + duration_s + ", allowed from 0");
    }
  }

  /** A clock whose time is believed. */
  public StepClock(OffsetDateTime start, double duration_s, OffsetDateTime now) {
    this(start, duration_s, now, Trust.SURE);
  }

  /** Whether the time can be believed. */
  public enum Trust {
    SURE,
    /** It went by without a sign of life: the computer's clock may have been set forward. */
    LEAPT
  }

  /** Where the clock stands. */
  public enum Stand {
    RUNNING,
    ENDED,
    /** The computer's time lies before the start. */
    TIME_SET_BACK,
    /** Ended by a time that may have leapt. */
    TIME_LEAPT
  }

  private double elapsed_s() {
    Duration elapsed = Duration.between(start, now);
    return elapsed.getSeconds() + elapsed.getNano() * 1e-9;
  }

  public Stand stand() {
    double elapsed_s = elapsed_s();
    if (elapsed_s < 0) {
      return Stand.TIME_SET_BACK;
    }
    if (elapsed_s < duration_s) {
      return Stand.RUNNING;
    }
    return trust == Trust.SURE ? Stand.ENDED : Stand.TIME_LEAPT;
  }

  /** Seconds to go; the whole duration where the time was set back, 0 where it has ended. */
  public double left_s() {
    return Math.min(duration_s, Math.max(0, duration_s - elapsed_s()));
  }

  /** Seconds since the end; 0 where it has not ended. */
  public double late_s() {
    return Math.max(0, elapsed_s() - duration_s);
  }

  /** Share that has run, 0 to 1. */
  public double share() {
    return duration_s == 0 ? 1 : 1 - left_s() / duration_s;
  }

  /** When it ends. */
  public OffsetDateTime end() {
    return start.plusNanos((long) (duration_s * 1e9));
  }
}
