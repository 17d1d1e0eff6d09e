package faintwind.device;

import java.time.Duration;
import java.time.Instant;

/** A time that moves only when somebody waits by it. */
public final class StillTime implements Timekeeper {
  private Instant now = Instant.parse("2026-11-25T18:00:00Z");

  @Override
  public synchronized Instant now() {
    return now;
  }

  @Override
  public synchronized void pause(Duration wait) {
    now = now.plus(wait);
  }
}
