package faintwind.device;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * Tells the time and waits. The real one reads the wall clock once and then counts on steadily, so
 * that a clock that is set during a recording does not shift it; a test's moves only when told.
 */
public interface Timekeeper {
  /** The time now; never goes back. */
  Instant now();

  /** Waits. */
  void pause(Duration wait) throws InterruptedException;

  /** The computer's own time. */
  static Timekeeper system() {
    Instant begin = Clock.systemUTC().instant();
    long begin_ns = System.nanoTime();
    return new Timekeeper() {
      @Override
      public Instant now() {
        return begin.plusNanos(System.nanoTime() - begin_ns);
      }

      @Override
      public void pause(Duration wait) throws InterruptedException {
        if (!wait.isNegative() && !wait.isZero()) {
          Thread.sleep(wait.toMillis(), wait.toNanosPart() % 1_000_000);
        }
      }
    };
  }
}
