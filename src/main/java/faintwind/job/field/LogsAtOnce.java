package faintwind.job.field;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does one task for each log, as many at once as the machine has processors. */
final class LogsAtOnce {
  private LogsAtOnce() {}

  /** What a caller learns of each result, in order. */
  interface Done<T> {
    void of(T result, int number);
  }

  /** How many are done at once. */
  static int threads() {
    return Runtime.getRuntime().availableProcessors();
  }

  /**
   * Every result in the order of the tasks.
   *
   * @throws IOException the first that a task has thrown; then no further task begins
   */
  static <T> List<T> each(List<Callable<T>> tasks, Done<T> done) throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(threads());
    try {
      List<Future<T>> begun = new ArrayList<>();
      tasks.forEach(task -> begun.add(pool.submit(task)));
      List<T> results = new ArrayList<>();
      for (Future<T> future : begun) {
        results.add(future.get());
        done.of(results.get(results.size() - 1), results.size());
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw new IllegalStateException("a log could not be converted", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
