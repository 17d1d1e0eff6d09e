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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Carries the rows of one open log through the estimator to where they go. Speeds of smoothed
 * blocks are found and written on a second thread. For one use.
 */
final class LogConversion {
  private static final long PROGRESS_ROWS = 5_000;

  private final LogReader reader;
  private final SignalMatch match;
  private final Maker maker;
  private final Target target;
  private final WaitingRows waiting = new WaitingRows();
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
    try (Relay relay = new Relay()) {
      rows(maker.estimator(this::take, relay::run), watch);
      relay.finish();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return count;
  }

  private void rows(SpeedEstimator estimator, JobWatch watch) throws IOException {
    target.pause();
    Optional<LogRow> next = reader.next();
    long taken = 0;
    while (next.isPresent() && !watch.cancelled()) {
      waiting.add(next.get());
      estimator.accept(sample(next.get()), this::take);
      target.pause();
      if (++taken % PROGRESS_ROWS == 0) {
        watch.progress("convert", taken, 0);
      }
      next = reader.next();
    }
    estimator.finish(this::take);
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
