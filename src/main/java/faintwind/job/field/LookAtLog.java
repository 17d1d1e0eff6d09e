package faintwind.job.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalDouble;

/** Converts a field log as {@link Convert} does, to be looked at; nothing is written. */
public final class LookAtLog {
  private static final long PROGRESS_ROWS = 5_000;

  private final Calibration calibration;
  private final String calibrationName;
  private final SpeedSettings settings;
  private final Optional<ImportProfile> profile;

  public LookAtLog(Calibration calibration, String calibrationName, SpeedSettings settings) {
    this(calibration, calibrationName, settings, Optional.empty());
  }

  private LookAtLog(
      Calibration calibration,
      String calibrationName,
      SpeedSettings settings,
      Optional<ImportProfile> profile) {
    this.calibration = calibration;
    this.calibrationName = calibrationName;
    this.settings = settings;
    this.profile = profile;
  }

  /** The same for foreign logs, whose lines mean what the profile says. */
  public LookAtLog reading(ImportProfile foreign) {
    return new LookAtLog(calibration, calibrationName, settings, Optional.of(foreign));
  }

  /**
   * A converted log.
   *
   * @param log the file
   * @param start when its time 0 was
   * @param signal column of the signal with its unit
   * @param summary counts and range
   * @param rows the rows
   */
  public record Looked(
      Path log,
      Optional<OffsetDateTime> start,
      String signal,
      ConversionSummary summary,
      FieldRows rows) {}

  /**
   * Reads and converts; a cancelled watch ends it early with what is done so far.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Looked> look(Path log, JobWatch watch) throws IOException {
    if (!Files.isRegularFile(log)) {
      return Checked.refused(
          Problem.error("file.missing", Where.file(log.toString()), log.toString()));
    }
    try (InputStream in = new BufferedInputStream(Files.newInputStream(log))) {
      Checked<LogReader> opened =
          LogReader.open(in, log.toString(), calibration.signal().chain().input(), profile);
      if (!(opened instanceof Checked.Ok<LogReader> ok)) {
        return Checked.refused(opened.problems());
      }
      LogReader reader = ok.value();
      Optional<SignalMatch> match = SignalMatch.of(reader.columns().unit(), calibration.signal());
      if (match.isEmpty()) {
        return Checked.refused(unitDiffers(log, reader));
      }
      Looked looked = new Pass(reader, match.get()).run(log, watch);
      return looked.rows().size() == 0
          ? Checked.refused(
              Problem.error(
                  "convert.no-row-readable",
                  Where.file(log.toString()),
                  String.valueOf(looked.summary().rows())))
          : Checked.ok(looked, ok.notes());
    }
  }

  private Problem unitDiffers(Path log, LogReader reader) {
    return Problem.error(
        "convert.unit-differs",
        Where.file(log.toString()),
        reader.columns().unit().column(),
        calibration.signal().unit().column());
  }

  /** One reading of one log. */
  private final class Pass {
    private final LogReader reader;
    private final SignalMatch match;
    private final Deque<LogRow> waiting = new ArrayDeque<>();
    private final FieldRows rows = new FieldRows();
    private final ConversionCount count = new ConversionCount();

    Pass(LogReader reader, SignalMatch match) {
      this.reader = reader;
      this.match = match;
    }

    Looked run(Path log, JobWatch watch) throws IOException {
      SpeedEstimator estimator = SpeedEstimator.smoothing(calibration, settings);
      Optional<LogRow> next = reader.next();
      long taken = 0;
      while (next.isPresent() && !watch.cancelled()) {
        waiting.add(next.get());
        estimator.accept(sample(next.get()), this::take);
        if (++taken % PROGRESS_ROWS == 0) {
          watch.progress("convert", taken, 0);
        }
        next = reader.next();
      }
      estimator.finish(this::take);
      rows.finish();
      return new Looked(
          log,
          reader.columns().start(),
          reader.columns().unit().symbol(),
          count.summary(log.toString(), calibrationName, settings.average_s()),
          rows);
    }

    private void take(SpeedRow row) {
      LogRow of = waiting.removeFirst();
      rows.add(of.time_s(), of.signal(), row);
      count.add(row);
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
}
