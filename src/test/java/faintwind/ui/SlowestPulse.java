package faintwind.ui;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/**
 * Watches how long the JavaFX thread is busy from one pulse to the next. It counts that thread's
 * own processor time, so that other work on the machine does not count against the window.
 */
final class SlowestPulse {
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final AtomicLong slowest_ns = new AtomicLong();
  private final AnimationTimer timer;
  private long before_ns = -1;

  SlowestPulse() {
    timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            long used_ns = threads.getCurrentThreadCpuTime();
            if (before_ns >= 0) {
              slowest_ns.accumulateAndGet(used_ns - before_ns, Math::max);
            }
            before_ns = used_ns;
          }
        };
  }

  void start() {
    Platform.runLater(timer::start);
  }

  /** Forgets what was seen so far, such as the first layout of a window. */
  void forget() {
    onFxThread(() -> slowest_ns.set(0));
  }

  /** The busiest stretch between two pulses so far, in milliseconds. */
  double slowest_ms() {
    onFxThread(() -> {});
    return slowest_ns.get() / 1e6;
  }

  private static void onFxThread(Runnable run) {
    CompletableFuture<Void> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          run.run();
          done.complete(null);
        });
    done.join();
  }
}
