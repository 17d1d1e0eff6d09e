package faintwind.job.field;

import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.MinuteSpeed;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;

/**
 * Carries the rows of one open log through the estimator to where they go. A live row is done
 * before the next is waited for; of a file, one thread reads, a second smooths blocks, and a third
 * finds their speeds and writes them. For one use.
 */
final class LogConversion {
  private static final int BATCH = 500;
  private static final int PROGRESS_BATCHES = 10;
  private static final int BATCHES_AHEAD = 8;
  private static final int BLOCKS_AHEAD = 2;

  private final LogReader reader;
  private final SignalMatch match;
  private final Maker maker;
  private final Target target;
  private final Queue<LogRow> waiting = new ConcurrentLinkedQueue<>();
  private final ConversionCount count = new ConversionCount();

  /** The conversion of an open log. */
  LogConversion(OpenLog log, Maker maker, Target target) {
    reader = log.reader();
    match = log.match();
    this.maker = maker;
    this.target = target;
  }

  /** Makes the estimator, given who takes its minutes and who does what can be done later. */
  interface Maker {
    SpeedEstimator estimator(Consumer<MinuteSpeed> minutes, Consumer<Runnable> later);
  }

  /** Where the rows go. */
  interface Target {
    /** One row with its speed. */
    void take(LogRow row, SpeedRow speed) throws IOException;

    /** A minute that is done. */
    default void take(MinuteSpeed minute) throws IOException {}

    /** Every row that was ready at once was taken; the next may take its time. */
    default void pause() throws IOException {}
  }

  /** Converts every row; a cancelled watch ends it early with what is done so far. */
  ConversionCount run(JobWatch watch) throws IOException {
    try (Relay writing = new Relay(BLOCKS_AHEAD);
        Relay smoothing = new Relay(BATCHES_AHEAD)) {
      SpeedEstimator estimator = maker.estimator(this::take, writing::run);
      rows(estimator, smoothing, watch);
      smoothing.run(() -> estimator.finish(this::take));
      smoothing.finish();
      writing.finish();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  /** Converts each row before the next is read. */
  ConversionCount runLive(JobWatch watch) throws IOException {
    try {
      SpeedEstimator estimator = maker.estimator(this::take, Runnable::run);
      target.pause();
      Optional<LogRow> next = reader.next();
      for (long taken = 1; next.isPresent() && !watch.cancelled(); taken++) {
        waiting.add(next.get());
        estimator.accept(sample(next.get()), this::take);
        target.pause();
        if (taken % (BATCH * PROGRESS_BATCHES) == 0) {
          watch.progress("convert", taken, 0);
        }
        next = reader.next();
      }
      estimator.finish(this::take);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  private void rows(SpeedEstimator estimator, Relay smoothing, JobWatch watch) throws IOException {
    long taken = 0;
    for (int batches = 1; ; batches++) {
      List<LogSample> batch = batch();
      if (batch.isEmpty() || watch.cancelled()) {
        return;
      }
      smoothing.run(() -> batch.forEach(sample -> estimator.accept(sample, this::take)));
      taken += batch.size();
      if (batches % PROGRESS_BATCHES == 0) {
        watch.progress("convert", taken, 0);
      }
    }
  }

  private List<LogSample> batch() throws IOException {
    List<LogSample> batch = new ArrayList<>(BATCH);
    while (batch.size() < BATCH) {
      Optional<LogRow> next = reader.next();
      if (next.isEmpty()) {
        break;
      }
      waiting.add(next.get());
      batch.add(sample(next.get()));
    }
    return batch;
  }

  private void take(SpeedRow row) {
    try {
      target.take(waiting.remove(), row);
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

  private LogSample sample(LogRow row) {
    OptionalDouble signal =
        row.signal().isPresent()
            ? OptionalDouble.of(match.apply(row.signal().getAsDouble()))
            : row.signal();
    LogAir air =
        new LogAir(
            row.air().temperature_K(), row.air().pressure_Pa(), row.air().relativeHumidity());
    return new LogSample(row.time_s(), signal, air, row.supply_V());
  }
}
