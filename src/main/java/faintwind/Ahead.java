package faintwind;

import faintwind.job.formula.OpenCalibration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/**
 * What a command is sure to need, prepared on a second thread while the first still reads texts and
 * command line. The two use different libraries, and the command begins when both are done, so that
 * no two classes wait for one another; a command line that is refused waits for nothing. What fails
 * is left alone: it fails again where it is needed, and is told there.
 */
final class Ahead {
  private static final Set<String> BY_CALIBRATION = Set.of("convert");
  private static final Set<String> HELP = Set.of("-h", "--help");

  private final Optional<Thread> second;

  private Ahead(Optional<Thread> second) {
    this.second = second;
  }

  /** Nothing is prepared. */
  static Ahead ofNothing() {
    return new Ahead(Optional.empty());
  }

  /** Begins where there is something to prepare, and a processor that has nothing else to do. */
  static Ahead of(String... arguments) {
    return isOfUse(Runtime.getRuntime().availableProcessors(), arguments)
        ? of(OpenCalibration::prepare)
        : ofNothing();
  }

  /** Whether this command line needs something, and so many processors leave one idle. */
  static boolean isOfUse(int processors, String... arguments) {
    return processors > 1
        && arguments.length > 0
        && BY_CALIBRATION.contains(arguments[0])
        && Arrays.stream(arguments).noneMatch(HELP::contains);
  }

  /** Begins a task. */
  static Ahead of(Runnable task) {
    Thread second = new Thread(task, "ahead");
    second.setDaemon(true);
    second.setUncaughtExceptionHandler((thread, failure) -> {});
    second.start();
    return new Ahead(Optional.of(second));
  }

  /** Waits until it is done; not where this thread is interrupted. */
  void await() {
    try {
      if (second.isPresent()) {
        second.get().join();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
