package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.CompareCalibrations;
import faintwind.calibration.compare.Comparison;
import faintwind.files.calibration.CalibrationFile;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two calibrations of an instrument against each other.
 *
 * @param earlier the one before
 * @param later the one after
 * @param comparison what came of it
 */
public record CompareKept(Calibration earlier, Calibration later, Comparison comparison) {

  /** Every calibration that was made or put in force, the earliest first. */
  public static List<String> files(InstrumentState state) {
    List<String> files = new ArrayList<>();
    for (Standing<? extends Event> line : state.lines()) {
      if (line.stands() && line.event() instanceof CalibrationMade made) {
        files.add(made.file());
      } else if (line.stands() && line.event() instanceof CalibrationPutInForce put) {
        files.add(put.file());
      }
    }
    return files.stream().distinct().toList();
  }

  /**
   * The last two that were put in force, which is what a person asks for first; where only one ever
   * was, the last two that were made. Empty where there are not two.
   */
  public static Optional<Pair> lastTwo(InstrumentState state) {
    List<String> forced =
        state.standing(CalibrationPutInForce.class).stream()
            .map(line -> line.event().file())
            .distinct()
            .toList();
    List<String> files = forced.size() > 1 ? forced : files(state);
    return files.size() < 2
        ? Optional.empty()
        : Optional.of(new Pair(files.get(files.size() - 2), files.get(files.size() - 1)));
  }

  /** Two files of the folder. */
  public record Pair(String earlier, String later) {}

  /**
   * Reads and compares two.
   *
   * @param folder of the instrument
   * @return refused where one cannot be read or they cannot be compared
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<CompareKept> of(Path folder, Pair pair) throws IOException {
    Checked<Calibration> before = read(folder, pair.earlier());
    Checked<Calibration> after = read(folder, pair.later());
    return before.then(
        earlier ->
            after.then(
                later ->
                    CompareCalibrations.of(earlier, later)
                        .map(c -> new CompareKept(earlier, later, c))));
  }

  private static Checked<Calibration> read(Path folder, String file) throws IOException {
    return CalibrationFile.read(folder.resolve(file), file);
  }
}
