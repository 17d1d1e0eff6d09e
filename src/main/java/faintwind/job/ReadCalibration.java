package faintwind.job;

import faintwind.calibration.Calibration;
import faintwind.files.CalibrationFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;

/** Reads a calibration file, for a screen or a comparison. */
public final class ReadCalibration {
  private ReadCalibration() {}

  /**
   * The calibration, or everything that is wrong with its file.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Calibration> read(Path file) throws IOException {
    return CalibrationFile.read(file, file.toString());
  }
}
