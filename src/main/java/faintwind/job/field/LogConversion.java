package faintwind.job.field;

import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.files.run.SpeedWriter;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Carries the rows of one open log through the estimator to the writer. For one use. */
final class LogConversion {
  private static final long PROGRESS_ROWS = 20_000;

  /** When rows are brought to the reader of the output. */
  enum Flush {
    EACH_ROW,
    AT_END
  }

  private final LogReader reader;
  private final SignalMatch match;
  private final SpeedEstimator estimator;
  private final Flush flush;
  private final Deque<String> waiting = new ArrayDeque<>();
  private final List<SpeedRow> ready = new ArrayList<>();
  private final ConversionCount count = new ConversionCount();

  LogConversion(LogReader reader, SignalMatch match, SpeedEstimator estimator, Flush flush) {
    this.reader = reader;
    this.match = match;
    this.estimator = estimator;
    this.flush = flush;
  }

  /** Converts every row; a cancelled watch ends it early with what is done so far. */
  ConversionCount run(OutputStream out, JobWatch watch) throws IOException {
    SpeedWriter writer = SpeedWriter.begin(out, reader.columns());
    if (flush == Flush.EACH_ROW) {
      writer.flush();
    }
    Optional<LogRow> next = reader.next();
    long taken = 0;
    while (next.isPresent() && !watch.cancelled()) {
      waiting.add(next.get().text());
      estimator.accept(sample(next.get()), ready::add);
      hand(writer);
      if (++taken % PROGRESS_ROWS == 0) {
        watch.progress("convert", taken, 0);
      }
      next = reader.next();
    }
    estimator.finish(ready::add);
    hand(writer);
    writer.flush();
    return count;
  }

  private void hand(SpeedWriter writer) throws IOException {
    for (SpeedRow row : ready) {
      writer.write(waiting.removeFirst(), row);
      count.add(row);
    }
    if (flush == Flush.EACH_ROW && !ready.isEmpty()) {
      writer.flush();
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
