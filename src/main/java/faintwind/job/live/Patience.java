package faintwind.job.live;

import faintwind.device.SampleSource;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;

/** Closes a source that is waited for too long, or no longer. */
final class Patience {
  private static final long LOOK_MS = 100;

  private final Timer timer = new Timer("faintwind-patience", true);

  private Patience() {}

  /**
   * Begins to wait.
   *
   * @param most how long
   * @param watch ends it early
   */
  static Patience with(SampleSource source, Duration most, JobWatch watch) {
    Patience patience = new Patience();
    long begin_ns = System.nanoTime();
    TimerTask look =
        new TimerTask() {
          @Override
          public void run() {
            if (watch.cancelled() || System.nanoTime() - begin_ns > most.toNanos()) {
              cancel();
              close(source);
            }
          }
        };
    patience.timer.schedule(look, LOOK_MS, LOOK_MS);
    return patience;
  }

  private static void close(SampleSource source) {
    try {
      source.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** It came, or nobody waits any more. */
  void end() {
    timer.cancel();
  }
}
