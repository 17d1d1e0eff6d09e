package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.EnteredFile;
import faintwind.job.FreeName;
import faintwind.job.JobWatch;
import faintwind.job.SoftwareVersion;
import faintwind.job.field.ConversionSummary;
import faintwind.job.field.Convert;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.Attached;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.LogConverted;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Converts a field log and keeps it with the instrument: the log and its speeds in {@code logs/},
 * an entry for each with its hash, and one that says which calibration was used. A log that is in
 * the folder already is not copied.
 */
public final class KeepConversion {
  private final InstrumentView view;
  private final Enter enter;
  private final How how;

  /**
   * How logs are converted.
   *
   * @param calibration the calibration file
   * @param settings averaging and air, by the calibration
   * @param profile what the lines of a foreign log mean
   * @param minutes where the means of whole minutes go, where they are wanted
   */
  public record How(
      Path calibration,
      Function<Calibration, SpeedSettings> settings,
      Optional<ImportProfile> profile,
      Optional<Path> minutes) {}

  /**
   * What was kept.
   *
   * @param log relative to the folder
   * @param speeds relative to the folder
   * @param entry the line that says by which calibration
   */
  public record Kept(ConversionSummary summary, String log, String speeds, JournalEntry entry) {}

  public KeepConversion(InstrumentView view, Enter enter, How how) {
    this.view = view;
    this.enter = enter;
    this.how = how;
  }

  /**
   * Converts and keeps one log; nothing stays of one that is refused.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Kept> keep(Path log, JobWatch watch) throws IOException {
    Checked<Calibration> read =
        CalibrationFile.read(how.calibration(), how.calibration().toString());
    if (!(read instanceof Checked.Ok<Calibration> ok)) {
      return Checked.refused(read.problems());
    }
    Path root = view.path().toAbsolutePath().normalize();
    List<Problem> refusals = new ArrayList<>();
    enter.shut().ifPresent(refusals::add);
    altered(root, how.calibration()).ifPresent(refusals::add);
    altered(root, log).ifPresent(refusals::add);
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Path logs = Files.createDirectories(view.path().resolve("logs"));
    boolean inside = isInside(root, log);
    String name = String.valueOf(log.getFileName());
    Path speeds = FreeName.in(logs, "speeds-" + name);
    Convert plain =
        new Convert(ok.value(), how.calibration().toString(), how.settings().apply(ok.value()));
    Convert lines = how.profile().map(plain::reading).orElse(plain);
    Convert convert = how.minutes().map(lines::withMinutes).orElse(lines);
    Checked<ConversionSummary> done = convert.file(log, speeds, watch);
    if (!(done instanceof Checked.Ok<ConversionSummary> summary)) {
      return Checked.refused(done.problems());
    }
    Path kept = inside ? log : copied(log, logs, speeds);
    Checked<JournalEntry> entered = enter.plain(Optional.empty(), events(root, kept, speeds));
    return entered
        .map(
            entry ->
                new Kept(
                    summary.value(),
                    EnteredFile.name(root, kept),
                    EnteredFile.name(root, speeds),
                    entry))
        .then(made -> Checked.ok(made, summary.notes()));
  }

  private static boolean isInside(Path root, Path file) {
    return file.toAbsolutePath().normalize().startsWith(root);
  }

  /** That a file of the folder is not the one that was entered, so that nothing may rest on it. */
  private Optional<Problem> altered(Path root, Path file) throws IOException {
    return isInside(root, file) && Files.isRegularFile(file)
        ? EntryRules.altered(view, new Attached(EnteredFile.name(root, file), Sha256.of(file)))
        : Optional.empty();
  }

  /** The same; where there is no room for it, its speeds go too. */
  private static Path copied(Path log, Path logs, Path speeds) throws IOException {
    try {
      return copy(log, logs, String.valueOf(log.getFileName()));
    } catch (IOException e) {
      Files.delete(speeds);
      throw e;
    }
  }

  /** The copy of a log from elsewhere: that of an earlier conversion, where it is the same. */
  private static Path copy(Path log, Path logs, String name) throws IOException {
    Path there = logs.resolve(name);
    if (Files.isRegularFile(there) && Sha256.of(there).equals(Sha256.of(log))) {
      return there;
    }
    Path target = FreeName.in(logs, name);
    try (AtomicFile file = AtomicFile.begin(target)) {
      Files.copy(log, file.stream());
      file.commit();
    }
    return target;
  }

  private List<Event> events(Path root, Path log, Path speeds) throws IOException {
    List<Event> events = new ArrayList<>();
    FileAdded added = EnteredFile.added(root, FileRole.FIELD_LOG, log);
    if (EntryRules.entered(view, added.file()).isEmpty()) {
      events.add(added);
    }
    FileAdded made = EnteredFile.added(root, FileRole.SPEEDS, speeds);
    events.add(made);
    Optional<Path> minutes =
        how.minutes()
            .map(file -> file.toAbsolutePath().normalize())
            .filter(f -> f.startsWith(root));
    if (minutes.isPresent()) {
      events.add(EnteredFile.added(root, FileRole.MINUTES, minutes.get()));
    }
    boolean own = isInside(root, how.calibration());
    String calibration =
        own
            ? EnteredFile.name(root, how.calibration())
            : String.valueOf(how.calibration().getFileName());
    events.add(
        new LogConverted(
            added.file(),
            made.file(),
            calibration,
            Sha256.of(how.calibration()),
            Optional.of(SoftwareVersion.text())));
    return events;
  }
}
