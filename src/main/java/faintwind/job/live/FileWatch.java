package faintwind.job.live;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Timer;
import java.util.TimerTask;

/**
 * Looks several times a second whether a recording's file is still its own, also while nothing
 * arrives, and ends the source where it is not.
 */
final class FileWatch {
  private static final long LOOK_MS = 250;

  private final Timer timer = new Timer("faintwind-file-watch", true);

  FileWatch(LiveFile file, LiveInput input) {
    timer.schedule(
        new TimerTask() {
          @Override
          public void run() {
            try {
              if (file.isLost()) {
                input.source().close();
                cancel();
              }
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          }
        },
        LOOK_MS,
        LOOK_MS);
  }

  /** Looks no more. */
  void close() {
    timer.cancel();
  }
}
