package faintwind.job.turntable;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.SpinTurns;
import faintwind.files.run.TurnsInTable;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Puts counted turns into a row of a runs table. */
public final class FillTurns {
  private FillTurns() {}

  /**
   * The cells that turns fill.
   *
   * @param soundStart_s when the sound began, on the run file's clock; empty where not known, and
   *     then nobody knows when the first click came
   */
  public static Map<String, OptionalDouble> cells(
      BeatTimes.Turning turning, OptionalDouble soundStart_s) {
    Map<String, OptionalDouble> cells = new LinkedHashMap<>();
    cells.put("turns", OptionalDouble.of(turning.turns()));
    cells.put("turns_time_s", OptionalDouble.of(turning.time_s().value()));
    cells.put("u_turns_time_s", turning.time_s().u());
    cells.put("first_click_s", SpinTurns.heard(turning, soundStart_s).first_s());
    return cells;
  }

  /** Writes a table with the row filled; refused where the table has no such run. */
  public static Checked<Path> write(
      Path table, String run, Map<String, OptionalDouble> cells, Path target) throws IOException {
    Checked<byte[]> filled = TurnsInTable.filled(table, run, cells);
    if (!(filled instanceof Checked.Ok<byte[]> ok)) {
      return Checked.refused(filled.problems());
    }
    TurnsInTable.write(ok.value(), target);
    return Checked.ok(target);
  }
}
