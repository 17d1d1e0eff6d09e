package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.FreeName;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.Event.FileRole;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/**
 * Fits the runs of an instrument and keeps the calibration file in its folder, with a page to read
 * beside it.
 */
public final class KeepFormula {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private final Path folder;
  private final Calibrate calibrate;

  /**
   * Formulas of one instrument.
   *
   * @param folder the instrument's folder
   * @param calibrate how runs are calibrated
   */
  public KeepFormula(Path folder, Calibrate calibrate) {
    this.folder = folder;
    this.calibrate = calibrate;
  }

  /**
   * A formula that is kept.
   *
   * @param formula the fit
   * @param file the calibration file's name, relative to the folder
   * @param sha256 of the file
   */
  public record Kept(FittedFormula formula, String file, String sha256) {}

  /**
   * Fits and keeps, whole or not at all; an earlier file is never replaced.
   *
   * @throws IOException where the disk or a permission fails
   * @throws Cancelled where the watch says so
   */
  public Checked<Kept> fit(Path table, JobWatch watch) throws IOException {
    Checked<Calibrate.Outcome> outcome = calibrate.of(table, watch);
    if (!(outcome instanceof Checked.Ok<Calibrate.Outcome> ok)) {
      return Checked.refused(outcome.problems());
    }
    return Checked.ok(keep(ok.value()), ok.notes());
  }

  /**
   * Keeps a formula that was fitted; an earlier file is never replaced.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Kept keep(Calibrate.Outcome made) throws IOException {
    Path file = freeName(DAY.format(made.calibration().origin().created()));
    CalibrationFile.write(file, made.calibration());
    calibrate.writePage(made, page(file));
    FittedFormula formula =
        new FittedFormula(made.calibration(), made.shortfalls(), Checked.ok(made.look()));
    return new Kept(formula, name(file), Sha256.of(file));
  }

  /** What the journal says of a formula that was made: the file, and the page beside it. */
  public List<Event> events(Kept kept) throws IOException {
    Path page = page(folder.resolve(kept.file()));
    List<Event> events = new ArrayList<>();
    if (Files.isRegularFile(page)) {
      events.add(new Event.FileAdded(FileRole.REPORT, name(page), Sha256.of(page)));
    }
    events.add(new Event.CalibrationMade(kept.file(), kept.sha256()));
    return events;
  }

  private static Path page(Path file) {
    return file.resolveSibling(String.valueOf(file.getFileName()).replace(".json", ".html"));
  }

  /**
   * A calibration of the folder read again, with the straight-line look where the recordings it was
   * made from are at hand.
   *
   * @param file relative to the folder
   * @param state what is on record, the runs tables among it
   */
  public Checked<Kept> read(String file, InstrumentState state) throws IOException {
    Path path = folder.resolve(file);
    String sha256 = Files.exists(path) ? Sha256.of(path) : "";
    Checked<Calibration> read = CalibrationFile.read(path, file);
    if (!(read instanceof Checked.Ok<Calibration> ok)) {
      return Checked.refused(read.problems());
    }
    Calibration calibration = ok.value();
    Checked<FitLook> look =
        FormulaRuns.of(calibration, FormulaRuns.tables(state, folder))
            .map(set -> FitLook.withoutFit(calibration, set.runs()));
    return Checked.ok(
        new Kept(new FittedFormula(calibration, List.of(), look), file, sha256), ok.notes());
  }

  /**
   * The same formula with its fitted recordings: its model is fitted to its recordings once more,
   * which takes seconds. Where they are not at hand it stays as it is.
   *
   * @throws Cancelled where the watch says so
   */
  public Kept drawnAgain(Kept kept, InstrumentState state, JobWatch watch) throws IOException {
    Calibration calibration = kept.formula().calibration();
    Checked<FitLook> look = lookAgain(calibration, FormulaRuns.tables(state, folder), watch);
    return new Kept(
        new FittedFormula(calibration, kept.formula().shortfalls(), look),
        kept.file(),
        kept.sha256());
  }

  /** What a calibration was drawn from, its fitted recordings included. */
  public static Checked<FitLook> lookAgain(
      Calibration calibration, List<Path> tables, JobWatch watch) throws IOException {
    watch.progress("look", 0, 1);
    return FormulaRuns.of(calibration, tables)
        .map(set -> FitLook.again(calibration, set, watch::cancelled));
  }

  private Path freeName(String day) throws IOException {
    Path calibrations = folder.resolve("calibrations");
    Files.createDirectories(calibrations);
    return FreeName.in(calibrations, day + ".json");
  }

  private String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }
}
