package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.CompareCalibrations;
import faintwind.calibration.compare.Comparison;
import faintwind.files.calibration.CalibrationFile;
import faintwind.message.Checked;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The last two calibrations of an instrument that were put in force, against each other.
 *
 * @param earlier the one before
 * @param later the last one
 * @param comparison what came of it
 */
public record CompareKept(Calibration earlier, Calibration later, Comparison comparison) {

  /**
   * Reads and compares them.
   *
   * @param folder of the instrument
   * @return empty where there are not two; refused where one cannot be read or they cannot be
   *     compared
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Optional<CompareKept>> of(Path folder, InstrumentState state)
      throws IOException {
    List<String> files = new ArrayList<>();
    state.standing(CalibrationPutInForce.class).forEach(line -> files.add(line.event().file()));
    List<String> distinct = files.stream().distinct().toList();
    if (distinct.size() < 2) {
      return Checked.ok(Optional.empty());
    }
    Checked<Calibration> before = read(folder, distinct.get(distinct.size() - 2));
    Checked<Calibration> after = read(folder, distinct.get(distinct.size() - 1));
    return before.then(
        earlier ->
            after.then(
                later ->
                    CompareCalibrations.of(earlier, later)
                        .map(c -> Optional.of(new CompareKept(earlier, later, c)))));
  }

  private static Checked<Calibration> read(Path folder, String file) throws IOException {
    return CalibrationFile.read(folder.resolve(file), file);
  }
}
