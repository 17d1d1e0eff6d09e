package faintwind.job.formula;

import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.judging.MonteCarlo;
import faintwind.calibration.fit.judging.Refits;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.job.JobWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Refits shared out among the processors. The seed of a refit depends on its number alone, so the
 * result does not depend on how many threads there are.
 */
final class SharedRefits {
  private final FitResult fit;
  private final int count;
  private final long seed;
  private final JobWatch watch;
  private final AtomicInteger next = new AtomicInteger();
  private final Settling settling;
  private final AtomicInteger done = new AtomicInteger();
  private final ConcurrentSkipListMap<Integer, double[]> found = new ConcurrentSkipListMap<>();

  private SharedRefits(FitResult fit, int count, long seed, JobWatch watch) {
    this.fit = fit;
    this.count = count;
    this.seed = seed;
    this.watch = watch;
    this.settling = new Settling(fit, watch);
  }

  /**
   * The refits that converged, in the order of their numbers.
   *
   * @throws Cancelled where the watch says so
   */
  static List<double[]> draws(FitResult fit, int count, long seed, JobWatch watch) {
    return new SharedRefits(fit, count, seed, watch).draws();
  }

  private List<double[]> draws() {
    int threads = Math.max(1, Math.min(count, Runtime.getRuntime().availableProcessors()));
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<?>> shares = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        shares.add(pool.submit(this::share));
      }
      for (Future<?> share : shares) {
        share.get();
      }
      return List.copyOf(found.values());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Cancelled();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Cancelled) {
        throw new Cancelled();
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private void share() {
    Refits refits = new Refits(fit);
    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
      int number = i;
      refits
          .draw(MonteCarlo.seedOf(seed, number), watch::cancelled)
          .ifPresent(
              draw -> {
                found.put(number, draw);
                settling.draw(draw);
              });
      watch.progress("refits", done.incrementAndGet(), count);
    }
  }
}
