package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.complete.CompleteFormula;
import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.files.ShippedFolder;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.Due;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.report.export.CodeExport;
import faintwind.report.export.ExportedFormula;
import faintwind.report.export.PythonExport;
import faintwind.report.export.SheetExport;
import faintwind.report.export.TableExport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Writes the formula of a calibration for use without this program. */
public final class ExportFormula {
  private static final int SHEET_ROWS = 500;
  private static final String TEMPLATES = "assets/export";

  /** What it is written as. */
  public enum Kind {
    C("h"),
    PYTHON("py"),
    MICROPYTHON("py"),
    XLSX("xlsx"),
    TABLE("csv");

    private final String ending;

    Kind(String ending) {
      this.ending = ending;
    }

    /** Its word on the command line. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Usual ending of such a file's name. */
    public String ending() {
      return ending;
    }
  }

  private final Messages messages;

  public ExportFormula(Messages messages) {
    this.messages = messages;
  }

  /**
   * Writes the file, whole or not at all.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> write(Path calibration, Kind kind, Path target) throws IOException {
    Checked<Calibration> opened = OpenCalibration.read(calibration);
    if (!(opened instanceof Checked.Ok<Calibration> ok)) {
      return Checked.refused(opened.problems());
    }
    AtomicFile.write(target, bytes(exported(ok.value(), calibration), kind, target));
    return Checked.ok(target, ok.notes());
  }

  private static ExportedFormula exported(Calibration calibration, Path file) throws IOException {
    return new ExportedFormula(
        calibration,
        CompleteFormula.of(calibration),
        String.valueOf(file.getFileName()),
        Sha256.of(file),
        Due.byTime(calibration.origin().validFrom()).at().toLocalDate());
  }

  private byte[] bytes(ExportedFormula exported, Kind kind, Path target) throws IOException {
    return switch (kind) {
      case C ->
          utf8(
              new CodeExport(exported, messages)
                  .c(template("faintwind.h"), String.valueOf(target.getFileName())));
      case MICROPYTHON ->
          utf8(
              new CodeExport(exported, messages).microPython(template("faintwind_micropython.py")));
      case PYTHON ->
          utf8(
              PythonExport.text(
                  exported,
                  messages,
                  template("faintwind_reader.py"),
                  template("faintwind_python_tail.py"),
                  CalibrationFile.forReader(exported.calibration())));
      case TABLE -> utf8(new TableExport(exported, messages).text());
      case XLSX ->
          new SheetExport(
                  exported, messages, template("faintwind_sheet.txt").lines().toList(), SHEET_ROWS)
              .bytes();
    };
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String template(String name) throws IOException {
    return ShippedFolder.with(TEMPLATES, folder -> Files.readString(folder.resolve(name)));
  }
}
