package faintwind.job.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.MinuteSpeed;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.AtomicFile;
import faintwind.files.run.LogColumns;
import faintwind.files.run.LogRow;
import faintwind.files.run.SpeedWriter;
import faintwind.files.run.TableForm;
import faintwind.job.FreeName;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.BufferedInputStream;
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
import java.util.concurrent.Callable;

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
  private final Optional<Path> minutes;
  private final TableForm form;

  /**
   * Conversions by one calibration.
   *
   * @param calibration the calibration in force
   * @param calibrationName how the summary names it
   * @param settings averaging and air
   */
  public Convert(Calibration calibration, String calibrationName, SpeedSettings settings) {
    this.calibration = calibration;
    this.calibrationName = calibrationName;
    this.settings = settings;
    this.profile = Optional.empty();
    this.minutes = Optional.empty();
    this.form = TableForm.POINTS;
  }

  private Convert(
      Convert other, Optional<ImportProfile> profile, Optional<Path> minutes, TableForm form) {
    this.calibration = other.calibration;
    this.calibrationName = other.calibrationName;
    this.settings = other.settings;
    this.profile = profile;
    this.minutes = minutes;
    this.form = form;
  }

  /** The same with semicolons and decimal commas in what is written. */
  public Convert withCommas() {
    return new Convert(this, profile, minutes, TableForm.COMMAS);
  }

  /** The same for foreign logs, whose lines mean what the profile says. */
  public Convert reading(ImportProfile foreign) {
    return new Convert(this, Optional.of(foreign), minutes, form);
  }

  /**
   * The same with the means of whole minutes in a file of their own, which appears when the log has
   * ended; for {@link #files} a folder, made where it is missing.
   */
  public Convert withMinutes(Path file) {
    return new Convert(this, profile, Optional.of(file), form);
  }

  /**
   * A log file to a file, which appears whole or not at all; an existing one is replaced.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<ConversionSummary> file(Path log, Path target, JobWatch watch) throws IOException {
    return file(log, target, Pace.FILE, watch);
  }

  private Checked<ConversionSummary> file(Path log, Path target, Pace pace, JobWatch watch)
      throws IOException {
    Optional<Problem> trouble = OpenLog.trouble(log);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = Files.newInputStream(log);
        AtomicFile file = AtomicFile.begin(target)) {
      Checked<ConversionSummary> done = rows(in, file.stream(), log.toString(), pace, watch);
      if (done.isOk() && !watch.cancelled()) {
        file.commit();
      }
      return done;
    }
  }

  /** A log file to a stream, such as standard output. */
  public Checked<ConversionSummary> fileTo(Path log, OutputStream out, JobWatch watch)
      throws IOException {
    Optional<Problem> trouble = OpenLog.trouble(log);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = Files.newInputStream(log)) {
      OutputStream buffered = new BufferedOutputStream(out, 1 << 16);
      return rows(in, buffered, log.toString(), Pace.FILE, watch);
    }
  }

  /** A live stream: each row is handed on, flushed, before the next is waited for. */
  public Checked<ConversionSummary> stream(
      InputStream in, OutputStream out, String name, JobWatch watch) throws IOException {
    OutputStream buffered = new BufferedOutputStream(out, 1 << 13);
    return rows(in, buffered, name, Pace.EACH_ROW, watch);
  }

  /** A live stream to a file, which appears whole when the stream ends. */
  public Checked<ConversionSummary> streamToFile(
      InputStream in, Path target, String name, JobWatch watch) throws IOException {
    try (AtomicFile file = AtomicFile.begin(target)) {
      Checked<ConversionSummary> done = rows(in, file.stream(), name, Pace.FILE, watch);
      if (done.isOk() && !watch.cancelled()) {
        file.commit();
      }
      return done;
    }
  }

  /**
   * Many logs into one folder, under their own file names, as many at once as there are processors.
   * A log that is refused does not keep the others. The folder is made where it is missing.
   *
   * @return one outcome a log, in order
   */
  public List<LogOutcome> files(List<Path> logs, Path folder, JobWatch watch) throws IOException {
    Files.createDirectories(folder);
    if (minutes.isPresent()) {
      Files.createDirectories(minutes.get());
    }
    int threads = LogsAtOnce.threads();
    List<Callable<Optional<LogOutcome>>> tasks = new ArrayList<>();
    for (Path log : logs) {
      Convert one = minutes.map(to -> withMinutes(target(log, to))).orElse(this);
      // those that are left over when each thread has had as many as the others are shared
      boolean shared = tasks.size() >= logs.size() - logs.size() % threads;
      Pace pace = shared ? Pace.FILE : Pace.FILE_ALONE;
      tasks.add(() -> one.unlessCancelled(log, target(log, folder), pace, watch));
    }
    return LogsAtOnce.each(
            tasks, (outcome, number) -> watch.progress("convert-logs", number, logs.size()))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<LogOutcome> unlessCancelled(Path log, Path target, Pace pace, JobWatch watch)
      throws IOException {
    return watch.cancelled()
        ? Optional.empty()
        : Optional.of(new LogOutcome(log, file(log, target, pace, JobWatch.endedBy(watch))));
  }

  /** Where {@link #files} puts a log's speeds. */
  public static Path target(Path log, Path folder) {
    Path name = log.getFileName();
    if (name == null) {
      throw new IllegalArgumentException("log = " + log + ", allowed a file");
    }
    return folder.resolve(name.toString());
  }

  /** A name that is free for the minutes of speeds, beside them. */
  public static Path minutesBeside(Path speeds) {
    String stem = String.valueOf(speeds.getFileName()).replaceFirst("(\\.csv)?$", "");
    return FreeName.beside(speeds, stem + "-minutes.csv");
  }

  /**
   * What became of one log of many.
   *
   * @param log the log
   * @param outcome its summary, or why it was refused
   */
  public record LogOutcome(Path log, Checked<ConversionSummary> outcome) {}

  /**
   * A log file to be looked at; nothing is written. A cancelled watch ends it early with what is
   * done so far.
   *
   * @return refused where the log would be refused for saving, and where no row has a speed to show
   * @throws IOException where the disk or a permission fails
   */
  public Checked<LookedAtLog> look(Path log, JobWatch watch) throws IOException {
    Optional<Problem> trouble = OpenLog.trouble(log);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = new BufferedInputStream(Files.newInputStream(log))) {
      Checked<OpenLog> opened = open(in, log.toString());
      if (!(opened instanceof Checked.Ok<OpenLog> ok)) {
        return Checked.refused(opened.problems());
      }
      ShownLog shown = new ShownLog();
      LogDoubts doubts = new LogDoubts(calibration, settings);
      ConversionCount count =
          new LogConversion(ok.value(), maker(Pace.FILE), shown, doubts).run(watch);
      Optional<Problem> nothing = ok.value().nothing(count);
      if (nothing.isPresent() || shown.rows().finish().size() == 0) {
        return Checked.refused(nothing.orElseGet(() -> ok.value().unreadable(count)));
      }
      LogColumns columns = ok.value().reader().columns();
      return Checked.ok(
          new LookedAtLog(
              log,
              columns.start(),
              columns.unit().symbol(),
              summary(count, log.toString()),
              shown.rows(),
              shown.figures(calibration)),
          told(ok.value(), doubts, log.toString()));
    }
  }

  private Checked<ConversionSummary> rows(
      InputStream in, OutputStream out, String name, Pace pace, JobWatch watch) throws IOException {
    Checked<OpenLog> opened = open(in, name);
    if (!(opened instanceof Checked.Ok<OpenLog> ok)) {
      return Checked.refused(opened.problems());
    }
    OpenLog log = ok.value();
    if (log.rehearsal()) {
      out.write((SpeedWriter.rehearsal() + "\n").getBytes(StandardCharsets.UTF_8));
    }
    SpeedWriter writer = SpeedWriter.begin(out, log.reader().columns(), form);
    try (MinuteFile minuteFile = MinuteFile.begin(minutes, log, form)) {
      LogDoubts doubts = new LogDoubts(calibration, settings);
      LogConversion conversion =
          new LogConversion(log, maker(pace), new Written(writer, minuteFile, pace), doubts);
      ConversionCount count =
          switch (pace) {
            case EACH_ROW -> conversion.runLive(watch);
            case FILE -> conversion.run(watch);
            case FILE_ALONE -> conversion.runAlone(watch);
          };
      writer.flush();
      Optional<Problem> nothing = pace != Pace.EACH_ROW ? log.nothing(count) : Optional.empty();
      if (nothing.isPresent()) {
        return Checked.refused(nothing.get());
      }
      if (!watch.cancelled()) {
        minuteFile.commit();
      }
      return Checked.ok(summary(count, name), told(log, doubts, name));
    }
  }

  private static List<Problem> told(OpenLog log, LogDoubts doubts, String name) {
    List<Problem> told = new ArrayList<>(log.told());
    told.addAll(doubts.problems(name, log.reader().columns()));
    return told;
  }

  private LogConversion.Maker maker(Pace pace) {
    return pace == Pace.EACH_ROW
        ? (wanted, workers) -> SpeedEstimator.filtering(calibration, settings, wanted)
        : (wanted, workers) -> SpeedEstimator.smoothing(calibration, settings, wanted, workers);
  }

  private Checked<OpenLog> open(InputStream in, String name) throws IOException {
    return OpenLog.of(in, name, calibration.signal(), profile);
  }

  private ConversionSummary summary(ConversionCount count, String name) {
    return count.summary(name, calibrationName, settings);
  }

  /** How the rows of a log are done. */
  private enum Pace {
    /** As they come, each brought to the reader of the output at once. */
    EACH_ROW,
    /** All that are there, on several threads. */
    FILE,
    /** The same on one thread, while others have logs of their own. */
    FILE_ALONE
  }

  private record Written(SpeedWriter writer, MinuteFile minutes, Pace pace)
      implements LogConversion.Target {
    @Override
    public void take(LogRow row, SpeedRow speed) throws IOException {
      writer.write(row, speed);
    }

    @Override
    public boolean wantsMinutes() {
      return minutes.isWanted();
    }

    @Override
    public void take(MinuteSpeed minute) throws IOException {
      minutes.write(minute);
    }

    @Override
    public void pause() throws IOException {
      if (pace == Pace.EACH_ROW) {
        writer.flush();
      }
    }
  }
}
