package faintwind.job.field;

import java.io.Closeable;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Stages of work, each of which does its tasks in their order and one at a time. The thread that
 * brings them shares the work with helpers: whoever has nothing better to do takes the next task of
 * the latest stage that has one. So no more threads run than there are processors; of three threads
 * on two processors a system may keep two on one of them and leave the other idle. Whoever is too
 * far ahead works or waits, so that memory stays bounded. After a task that failed none is done.
 * For one job.
 */
final class Stages implements Closeable {
  private final int mostAhead;
  private final List<Deque<Runnable>> waiting = new ArrayList<>();
  private final boolean[] busy;
  private final List<Thread> helpers = new ArrayList<>();
  private @Nullable Throwable failure;
  private boolean closed;

  /**
   * Stages with nothing to do yet.
   *
   * @param stages how many
   * @param helpers how many threads help the one that brings the tasks, 0 for none
   * @param mostAhead tasks that may wait before a stage
   */
  Stages(int stages, int helpers, int mostAhead) {
    this.mostAhead = mostAhead;
    busy = new boolean[stages];
    for (int i = 0; i < stages; i++) {
      waiting.add(new ArrayDeque<>());
    }
    for (int i = 0; i < helpers; i++) {
      Thread thread = new Thread(() -> workUntil(() -> closed), "stages-" + (i + 1));
      thread.setDaemon(true);
      this.helpers.add(thread);
      thread.start();
    }
  }

  /**
   * Takes tasks for a stage: for the first from the thread that brings them, for another from tasks
   * of the stage before. What an earlier one has thrown is thrown here, or by {@link #finish}.
   */
  Consumer<Runnable> stage(int stage) {
    return task -> {
      add(stage, task);
      if (stage == 0 && isFarAhead(0)) {
        bring(this::isNearlyThrough);
      }
    };
  }

  /** Works or waits until all tasks are done. */
  void finish() {
    bring(this::isIdle);
  }

  /** No task runs on after this, whatever became of them. */
  @Override
  public void close() throws InterruptedIOException {
    synchronized (this) {
      closed = true;
      notifyAll();
    }
    try {
      for (Thread helper : helpers) {
        helper.join();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    }
  }

  private synchronized void add(int stage, Runnable task) {
    throwFailure();
    waiting.get(stage).add(task);
    notifyAll();
  }

  /** Helping a little longer leaves the helpers both stages while the next tasks are brought. */
  private boolean isNearlyThrough() {
    return waiting.get(0).size() <= 1;
  }

  private synchronized boolean isFarAhead(int stage) {
    return stage < busy.length && waiting.get(stage).size() > mostAhead;
  }

  private synchronized boolean isIdle() {
    for (int stage = 0; stage < busy.length; stage++) {
      if (busy[stage] || !waiting.get(stage).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** The latest stage that can go on; it cannot while the next is far behind. */
  private OptionalInt ready() {
    for (int stage = busy.length - 1; failure == null && stage >= 0; stage--) {
      if (!busy[stage] && !waiting.get(stage).isEmpty() && !isFarAhead(stage + 1)) {
        return OptionalInt.of(stage);
      }
    }
    return OptionalInt.empty();
  }

  /** By the thread that brings the tasks. */
  private void bring(BooleanSupplier enough) {
    workUntil(() -> failure != null || enough.getAsBoolean());
    throwFailure();
  }

  private void workUntil(BooleanSupplier enough) {
    OptionalInt stage = taken(enough);
    while (stage.isPresent()) {
      work(stage.getAsInt());
      stage = taken(enough);
    }
  }

  /** Waits for a stage that can go on, and takes it; none once it is enough. */
  private synchronized OptionalInt taken(BooleanSupplier enough) {
    try {
      while (!enough.getAsBoolean()) {
        OptionalInt stage = ready();
        if (stage.isPresent()) {
          busy[stage.getAsInt()] = true;
          return stage;
        }
        wait();
      }
      return OptionalInt.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new InterruptedIOException("interrupted"));
    }
  }

  private void work(int stage) {
    Throwable thrown = null;
    try {
      next(stage).run();
    } catch (RuntimeException | Error e) {
      thrown = e;
    }
    synchronized (this) {
      busy[stage] = false;
      failure = failure == null ? thrown : failure;
      notifyAll();
    }
  }

  private synchronized Runnable next(int stage) {
    return waiting.get(stage).remove();
  }

  private synchronized void throwFailure() {
    if (failure instanceof RuntimeException thrown) {
      throw thrown;
    }
    if (failure != null) {
      throw new IllegalStateException("a task failed", failure);
    }
  }
}
