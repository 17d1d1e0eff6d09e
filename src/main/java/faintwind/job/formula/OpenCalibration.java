package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.files.calibration.CalibrationFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;

/** Reads a calibration file for whoever wants to use it. */
public final class OpenCalibration {
  private OpenCalibration() {}

  /** What a first reading needs beside its file, from any thread. */
  public static void prepare() {
    CalibrationFile.prepare();
  }

  /**
   * The calibration, or everything that is wrong with the file. That of a rehearsal is refused: it
   * may be looked at, never used.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Calibration> read(Path file) throws IOException {
    return CalibrationFile.read(file, file.toString())
        .then(
            read ->
                read.rehearsal()
                    ? Checked.refused(
                        Problem.error("calibration.rehearsal", Where.file(file.toString()), ""))
                    : Checked.ok(read));
  }
}
