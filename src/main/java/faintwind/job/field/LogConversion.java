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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

/** Carries the rows of one open log through the estimator to where they go. For one use. */
final class LogConversion {
  private static final long PROGRESS_ROWS = 5_000;

  private final LogReader reader;
  private final SignalMatch match;
  private final SpeedEstimator estimator;
  private final List<MinuteSpeed> minutes = new ArrayList<>();
  private final Deque<LogRow> waiting = new ArrayDeque<>();
  private final List<SpeedRow> ready = new ArrayList<>();
  private final ConversionCount count = new ConversionCount();

  /**
   * The conversion of an open log.
   *
   * @param estimator makes the estimator, given who takes its minutes
   */
  LogConversion(OpenLog log, Function<Consumer<MinuteSpeed>, SpeedEstimator> estimator) {
    reader = log.reader();
    match = log.match();
    this.estimator = estimator.apply(minutes::add);
  }

  /** Where the rows go. */
  interface Target {
    /** One row with its speed. */
    void take(LogRow row, SpeedRow speed) throws IOException;

    /** A minute that is done. */
    default void take(MinuteSpeed minute) throws IOException {}

    /** Every row that is ready was taken; the next may take its time. */
    default void pause() throws IOException {}
  }

  /** Converts every row; a cancelled watch ends it early with what is done so far. */
  ConversionCount run(Target target, JobWatch watch) throws IOException {
    target.pause();
    Optional<LogRow> next = reader.next();
    long taken = 0;
    while (next.isPresent() && !watch.cancelled()) {
      waiting.add(next.get());
      estimator.accept(sample(next.get()), ready::add);
      hand(target);
      if (++taken % PROGRESS_ROWS == 0) {
        watch.progress("convert", taken, 0);
      }
      next = reader.next();
    }
    estimator.finish(ready::add);
    hand(target);
    return count;
  }

  private void hand(Target target) throws IOException {
    for (SpeedRow row : ready) {
      target.take(waiting.removeFirst(), row);
      count.add(row);
    }
    for (MinuteSpeed minute : minutes) {
      target.take(minute);
    }
    minutes.clear();
    if (!ready.isEmpty()) {
      target.pause();
    }
    ready.clear();
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
