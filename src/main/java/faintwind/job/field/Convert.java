package faintwind.job.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.AtomicFile;
import faintwind.files.run.LogColumns;
import faintwind.files.run.LogReader;
import faintwind.files.run.SpeedWriter;
import faintwind.job.JobWatch;
import faintwind.job.field.LogConversion.Flush;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns field logs into air speed: input columns pass through, then speed, expanded uncertainty and
 * flag; one row out for each row in. A file is smoothed both ways, a stream is filtered over the
 * past; both in bounded memory. Every method refuses a log that cannot be converted with all its
 * problems, and then nothing is written.
 */
public final class Convert {
  private final Calibration calibration;
  private final String calibrationName;
  private final SpeedSettings settings;
  private final Optional<ImportProfile> profile;

  /**
   * Conversions by one calibration.
   *
   * @param calibration the calibration in force
   * @param calibrationName how the summary names it
   * @param settings averaging and air
   */
  public Convert(Calibration calibration, String calibrationName, SpeedSettings settings) {
    this(calibration, calibrationName, settings, Optional.empty());
  }

  private Convert(
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
  public Convert reading(ImportProfile foreign) {
    return new Convert(calibration, calibrationName, settings, Optional.of(foreign));
  }

  /**
   * A log file to a file, which appears whole or not at all; an existing one is replaced.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<ConversionSummary> file(Path log, Path target, JobWatch watch) throws IOException {
    Optional<Problem> trouble = trouble(log);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = Files.newInputStream(log);
        AtomicFile file = AtomicFile.begin(target)) {
      Checked<ConversionSummary> done =
          rows(in, file.stream(), log.toString(), Flush.AT_END, watch);
      if (done.isOk() && !watch.cancelled()) {
        file.commit();
      }
      return done;
    }
  }

  /** A log file to a stream, such as standard output. */
  public Checked<ConversionSummary> fileTo(Path log, OutputStream out, JobWatch watch)
      throws IOException {
    Optional<Problem> trouble = trouble(log);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = Files.newInputStream(log)) {
      OutputStream buffered = new BufferedOutputStream(out, 1 << 16);
      return rows(in, buffered, log.toString(), Flush.AT_END, watch);
    }
  }

  /** A live stream: each row is handed on, flushed, before the next is waited for. */
  public Checked<ConversionSummary> stream(
      InputStream in, OutputStream out, String name, JobWatch watch) throws IOException {
    OutputStream buffered = new BufferedOutputStream(out, 1 << 13);
    return rows(in, buffered, name, Flush.EACH_ROW, watch);
  }

  /** A live stream to a file, which appears whole when the stream ends. */
  public Checked<ConversionSummary> streamToFile(
      InputStream in, Path target, String name, JobWatch watch) throws IOException {
    try (AtomicFile file = AtomicFile.begin(target)) {
      Checked<ConversionSummary> done = rows(in, file.stream(), name, Flush.AT_END, watch);
      if (done.isOk() && !watch.cancelled()) {
        file.commit();
      }
      return done;
    }
  }

  /**
   * Many logs into one folder, under their own file names. A log that is refused does not keep the
   * others. The folder is made where it is missing.
   *
   * @return one outcome a log, in order
   */
  public List<LogOutcome> files(List<Path> logs, Path folder, JobWatch watch) throws IOException {
    Files.createDirectories(folder);
    List<LogOutcome> outcomes = new ArrayList<>();
    for (Path log : logs) {
      if (watch.cancelled()) {
        break;
      }
      outcomes.add(new LogOutcome(log, file(log, target(log, folder), watch)));
      watch.progress("convert-logs", outcomes.size(), logs.size());
    }
    return outcomes;
  }

  /** Where {@link #files} puts a log's speeds. */
  public static Path target(Path log, Path folder) {
    Path name = log.getFileName();
    if (name == null) {
      throw new IllegalArgumentException("log = " + log + ", allowed a file");
    }
    return folder.resolve(name.toString());
  }

  /**
   * What became of one log of many.
   *
   * @param log the log
   * @param outcome its summary, or why it was refused
   */
  public record LogOutcome(Path log, Checked<ConversionSummary> outcome) {}

  private Checked<ConversionSummary> rows(
      InputStream in, OutputStream out, String name, Flush flush, JobWatch watch)
      throws IOException {
    Checked<LogReader> opened =
        LogReader.open(in, name, calibration.signal().chain().input(), profile);
    if (!(opened instanceof Checked.Ok<LogReader> ok)) {
      return Checked.refused(opened.problems());
    }
    LogReader reader = ok.value();
    Optional<SignalMatch> match = SignalMatch.of(reader.columns().unit(), calibration.signal());
    List<Problem> problems = problems(reader.columns(), match, name);
    if (match.isEmpty() || !problems.isEmpty()) {
      return Checked.refused(problems);
    }
    SpeedEstimator estimator =
        flush == Flush.EACH_ROW
            ? SpeedEstimator.filtering(calibration, settings)
            : SpeedEstimator.smoothing(calibration, settings);
    if (ok.notes().stream().anyMatch(note -> note.id().equals(Calibration.REHEARSAL))) {
      out.write((SpeedWriter.rehearsal() + "\n").getBytes(StandardCharsets.UTF_8));
    }
    ConversionCount count =
        new LogConversion(reader, match.get(), estimator, flush).run(out, watch);
    if (flush == Flush.AT_END && count.rows() == 0) {
      return Checked.refused(Problem.error("file.no-rows", Where.file(name), ""));
    }
    if (flush == Flush.AT_END && count.allBad()) {
      String rows = String.valueOf(count.rows());
      return Checked.refused(Problem.error("convert.no-row-readable", Where.file(name), rows));
    }
    return Checked.ok(count.summary(name, calibrationName, settings.average_s()), ok.notes());
  }

  private List<Problem> problems(LogColumns columns, Optional<SignalMatch> match, String name) {
    List<Problem> problems = new ArrayList<>();
    if (match.isEmpty()) {
      String wanted = calibration.signal().unit().column();
      problems.add(
          Problem.error("convert.unit-differs", Where.file(name), columns.unit().column(), wanted));
    }
    List<String> there = SpeedWriter.alreadyIn(columns);
    if (!there.isEmpty()) {
      problems.add(
          Problem.error("convert.columns-there", Where.file(name), String.join(", ", there)));
    }
    return problems;
  }

  private static Optional<Problem> trouble(Path log) {
    Where where = Where.file(log.toString());
    if (!Files.exists(log)) {
      return Optional.of(Problem.error("file.missing", where, log.toString()));
    }
    return Files.isDirectory(log)
        ? Optional.of(Problem.error("file.is-folder", where, log.toString()))
        : Optional.empty();
  }
}
