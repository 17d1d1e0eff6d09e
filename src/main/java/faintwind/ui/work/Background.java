package faintwind.ui.work;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Runs work off the JavaFX thread, and comes back to that thread once: with the value, or with what
 * the world refused. Long jobs run one after the other; a job of minutes runs beside them, so that
 * they do not wait for it; entries have a queue of their own, so that none waits for a job and none
 * overtakes another.
 */
public final class Background {
  private final ExecutorService longWork = Executors.newSingleThreadExecutor(daemon("long-work"));
  private final ExecutorService entries = Executors.newSingleThreadExecutor(daemon("entries"));
  private final ExecutorService beside = Executors.newCachedThreadPool(daemon("beside"));
  private final Executor javafx;
  private final List<Running> shown = new ArrayList<>();
  private final ReadOnlyObjectWrapper<Optional<Running>> running =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyIntegerWrapper count = new ReadOnlyIntegerWrapper(0);

  /**
   * Work that comes back through an executor.
   *
   * @param javafx {@code Platform::runLater}; in a test without a window any executor
   */
  public Background(Executor javafx) {
    this.javafx = javafx;
  }

  /**
   * The long job that was begun last and is not ended, if any; the Next line shows it after 0.3 s.
   */
  public ReadOnlyObjectProperty<Optional<Running>> running() {
    return running.getReadOnlyProperty();
  }

  /**
   * Runs a long job.
   *
   * @param work off the JavaFX thread; asks its watch whether to stop
   * @param done on the JavaFX thread, with the value
   * @param failed on the JavaFX thread, with what the world refused
   */
  public <T> Running run(Work<T> work, Consumer<T> done, Consumer<IOException> failed) {
    Running watch = new Running(System.nanoTime());
    count.set(count.get() + 1);
    shown.add(watch);
    running.set(Optional.of(watch));
    submit(longWork, work, watch, new Answer<>(done, failed, () -> ended(watch)));
    return watch;
  }

  /** Takes no more work; what was taken is done. */
  public void close() {
    longWork.shutdown();
    entries.shutdown();
    beside.shutdown();
  }

  /** How many jobs are not ended that some screen may show. */
  public ReadOnlyIntegerProperty count() {
    return count.getReadOnlyProperty();
  }

  /**
   * Runs a job of minutes beside the other long jobs. Only the screen that began it shows how far
   * it is, so that a person can go on elsewhere.
   */
  public <T> Running runBeside(Work<T> work, Consumer<T> done, Consumer<IOException> failed) {
    Running watch = new Running(System.nanoTime());
    count.set(count.get() + 1);
    submit(beside, work, watch, new Answer<>(done, failed, () -> count.set(count.get() - 1)));
    return watch;
  }

  /** Runs a job that nobody waits for, not shown; it can be stopped by what is returned. */
  public <T> Running runQuietly(Work<T> work, Consumer<T> done, Consumer<IOException> failed) {
    Running watch = new Running(System.nanoTime());
    submit(beside, work, watch, new Answer<>(done, failed, () -> {}));
    return watch;
  }

  /**
   * Runs a short piece of work, such as writing an entry; it is not shown and cannot be stopped.
   */
  public <T> void entry(Work<T> work, Consumer<T> done, Consumer<IOException> failed) {
    submit(entries, work, new Running(System.nanoTime()), new Answer<>(done, failed, () -> {}));
  }

  /** Does something small on the JavaFX thread while the work that found it goes on. */
  public void meanwhile(Runnable small) {
    javafx.execute(small);
  }

  private record Answer<T>(Consumer<T> done, Consumer<IOException> failed, Runnable ended) {}

  private static <T> void post(Executor javafx, Answer<T> answers, Runnable last) {
    javafx.execute(
        () -> {
          answers.ended.run();
          last.run();
        });
  }

  private <T> void submit(ExecutorService thread, Work<T> work, Running watch, Answer<T> answers) {
    thread.execute(
        () -> {
          Runnable answer = () -> {};
          try {
            T value = work.run(watch);
            answer = () -> answers.done.accept(value);
          } catch (IOException e) {
            answer = () -> answers.failed.accept(e);
          } finally {
            // Also after a broken promise in the job, which the thread's handler reports.
            Runnable last = answer;
            post(javafx, answers, last);
          }
        });
  }

  private void ended(Running watch) {
    shown.remove(watch);
    count.set(count.get() - 1);
    running.set(shown.isEmpty() ? Optional.empty() : Optional.of(shown.get(shown.size() - 1)));
  }

  private static ThreadFactory daemon(String name) {
    return task -> {
      Thread thread = new Thread(task, "faintwind-" + name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
