package faintwind.job.field;

import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.MinuteSpeed;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedEstimator.Workers;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Carries the rows of one open log through the estimator to where they go. A live row is done
 * before the next is waited for; of a file, one thread reads and gathers blocks, a second smooths
 * them, and a third finds their speeds and writes them, or one does it all. For one use.
 */
final class LogConversion {
  private static final int LOOK_UP = 500;
  private static final int PROGRESS = 5000;
  private static final int BLOCKS_AHEAD = 5;
  private static final int MOST_HELPERS = 2;

  private final LogReader reader;
  private final SignalMatch match;
  private final Maker maker;
  private final Target target;
  private final WaitingRows waiting = new WaitingRows();
  private final ConversionCount count = new ConversionCount();
  private final LogDoubts doubts;

  /** The conversion of an open log. */
  LogConversion(OpenLog log, Maker maker, Target target, LogDoubts doubts) {
    this.doubts = doubts;
    reader = log.reader();
    match = log.match();
    this.maker = maker;
    this.target = target;
  }

  /** Makes the estimator, given who takes its minutes, if anybody, and who shares its work. */
  interface Maker {
    SpeedEstimator estimator(Optional<Consumer<MinuteSpeed>> minutes, Workers workers);
  }

  /** Where the rows go. */
  interface Target {
    /** One row with its speed. */
    void take(LogRow row, SpeedRow speed) throws IOException;

    /** Whether it takes minutes. */
    default boolean wantsMinutes() {
      return false;
    }

    /** A minute that is done. */
    default void take(MinuteSpeed minute) throws IOException {}

    /** Every row that was ready at once was taken; the next may take its time. */
    default void pause() throws IOException {}
  }

  /** Converts every row; a cancelled watch ends it early with what is done so far. */
  ConversionCount run(JobWatch watch) throws IOException {
    int helpers = Math.min(MOST_HELPERS, LogsAtOnce.threads() - 1);
    try (Stages stages = new Stages(2, helpers, BLOCKS_AHEAD)) {
      rows(new Workers(stages.stage(0), stages.stage(1)), watch);
      stages.finish();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  /** The same on this thread alone. */
  ConversionCount runAlone(JobWatch watch) throws IOException {
    try {
      rows(Workers.NOBODY_ELSE, watch);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  /** Converts each row before the next is read. */
  ConversionCount runLive(JobWatch watch) throws IOException {
    try {
      SpeedEstimator estimator = maker.estimator(minutes(), Workers.NOBODY_ELSE);
      Consumer<SpeedRow> ready = this::take;
      target.pause();
      Optional<LogRow> next = reader.next();
      for (long taken = 1; next.isPresent() && !watch.cancelled(); taken++) {
        waiting.add(next.get());
        waiting.handOver();
        estimator.accept(looked(next.get()), ready);
        target.pause();
        if (taken % PROGRESS == 0) {
          watch.progress("convert", taken, 0);
        }
        next = reader.next();
      }
      estimator.finish(ready);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  private void rows(Workers workers, JobWatch watch) throws IOException {
    Consumer<Runnable> smoothing =
        task -> {
          waiting.handOver();
          workers.smoothing().accept(task);
        };
    SpeedEstimator estimator =
        maker.estimator(minutes(), new Workers(smoothing, workers.telling()));
    Consumer<SpeedRow> ready = this::take;
    Optional<LogRow> next = reader.next();
    for (long taken = 1; next.isPresent(); taken++) {
      waiting.add(next.get());
      estimator.accept(looked(next.get()), ready);
      if (taken % PROGRESS == 0) {
        watch.progress("convert", taken, 0);
      }
      if (taken % LOOK_UP == 0 && watch.cancelled()) {
        break;
      }
      next = reader.next();
    }
    estimator.finish(ready);
  }

  private LogSample looked(LogRow row) {
    LogSample sample = row.read().matched(match);
    doubts.add(sample);
    return sample;
  }

  private Optional<Consumer<MinuteSpeed>> minutes() {
    return target.wantsMinutes() ? Optional.of(this::take) : Optional.empty();
  }

  private void take(SpeedRow row) {
    try {
      target.take(waiting.take(), row);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    count.add(row);
  }

  private void take(MinuteSpeed minute) {
    try {
      target.take(minute);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
