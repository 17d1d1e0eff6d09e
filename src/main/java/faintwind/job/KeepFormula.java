package faintwind.job;

import faintwind.files.CalibrationFile;
import faintwind.files.RunsTable;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/**
 * Fits the runs of an instrument and keeps the calibration file in its folder, with a page to read
 * beside it.
 */
public final class KeepFormula {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private final Path folder;
  private final Calibrate calibrate;
  private final Messages messages;

  /**
   * Formulas of one instrument.
   *
   * @param folder the instrument's folder
   * @param calibrate how runs are calibrated
   */
  public KeepFormula(Path folder, Calibrate calibrate, Messages messages) {
    this.folder = folder;
    this.calibrate = calibrate;
    this.messages = messages;
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
   * @throws faintwind.calibration.fit.Optimiser.Cancelled where the watch says so
   */
  public Checked<Kept> fit(Path table, JobWatch watch) throws IOException {
    Checked<Calibrate.Outcome> outcome = calibrate.of(table, watch);
    if (!(outcome instanceof Checked.Ok<Calibrate.Outcome> ok)) {
      return Checked.refused(outcome.problems());
    }
    Calibrate.Outcome made = ok.value();
    Path file = freeName(DAY.format(made.calibration().origin().created()));
    CalibrationFile.write(file, made.calibration(), messages);
    calibrate.writePage(
        made, file.resolveSibling(file.getFileName().toString().replace(".json", ".html")));
    FittedFormula formula =
        new FittedFormula(
            made.calibration(),
            made.shortfalls(),
            made.look().runs(),
            made.look().recordings(),
            Optional.of(made.look().straightLine()));
    return Checked.ok(new Kept(formula, name(file), Sha256.of(file)), ok.notes());
  }

  /**
   * A calibration of the folder read again, with the runs on record where they can be read.
   *
   * @param file relative to the folder
   * @param table the runs it may have come from
   */
  public Checked<Kept> read(String file, Optional<Path> table) throws IOException {
    Path path = folder.resolve(file);
    List<faintwind.calibration.Run> runs =
        table.isPresent() && Files.exists(table.get())
            ? RunsTable.read(table.get())
                .fold((value, notes) -> value.runSet().runs(), problems -> List.of())
            : List.of();
    String sha256 = Files.exists(path) ? Sha256.of(path) : "";
    return CalibrationFile.read(path, file)
        .map(
            calibration ->
                new Kept(
                    new FittedFormula(calibration, List.of(), runs, List.of(), Optional.empty()),
                    file,
                    sha256));
  }

  private Path freeName(String day) throws IOException {
    Path calibrations = folder.resolve("calibrations");
    Files.createDirectories(calibrations);
    Path file = calibrations.resolve(day + ".json");
    for (int i = 2; Files.exists(file); i++) {
      file = calibrations.resolve(day + "-" + i + ".json");
    }
    return file;
  }

  private String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }
}
