package faintwind.job.field;

import java.io.Closeable;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Does tasks in their order on a thread of its own, while another brings the next ones. Whoever is
 * too far ahead waits, so that memory stays bounded. After a task that failed none is done. For one
 * job.
 */
final class Relay implements Closeable {
  private final int mostAhead;
  private volatile boolean failed;

  private final ExecutorService second =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "relay");
            thread.setDaemon(true);
            return thread;
          });

  private final Deque<Future<?>> ahead = new ArrayDeque<>();

  /** A relay whose tasks may wait, but no more than so many. */
  Relay(int mostAhead) {
    this.mostAhead = mostAhead;
  }

  /** Hands a task on. What an earlier one has thrown is thrown here, or by {@link #finish}. */
  void run(Runnable task) {
    ahead.add(second.submit(() -> unlessFailed(task)));
    while (ahead.size() > mostAhead) {
      await(ahead.removeFirst());
    }
  }

  private void unlessFailed(Runnable task) {
    if (failed) {
      return;
    }
    failed = true;
    task.run();
    failed = false;
  }

  /** Waits for all tasks. */
  void finish() {
    while (!ahead.isEmpty()) {
      await(ahead.removeFirst());
    }
  }

  private static void await(Future<?> task) {
    try {
      task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new InterruptedIOException("interrupted"));
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException("a task failed", e.getCause());
    }
  }

  /** No task runs on after this, whatever became of them. */
  @Override
  public void close() throws InterruptedIOException {
    second.shutdown();
    try {
      while (!second.isTerminated()) {
        second.awaitTermination(1, TimeUnit.MINUTES);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    }
  }
}
