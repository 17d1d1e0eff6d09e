package faintwind.files.run;

import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The head of a run file or field log: its columns in their order, which of them carries the
 * signal, and when time 0 was.
 *
 * @param names every column, unknown ones too
 * @param unit unit of the signal
 * @param start when {@code time_s} was 0
 * @param delimiter between the cells of a row
 */
public record LogColumns(
    List<String> names, SignalUnit unit, Optional<OffsetDateTime> start, char delimiter) {
  static final String TIME = "time_s";
  public static final String AIR = "air_C";
  public static final String PRESSURE = "pressure_hPa";
  public static final String HUMIDITY = "rh_pct";
  public static final String SUPPLY = "supply_V";

  /** Temperature of a compensated meter's own terminals. */
  static final String TERMINAL = "terminal_C";

  public LogColumns {
    names = List.copyOf(names);
  }

  /** The names that mean something here. */
  static Set<String> known() {
    Set<String> known = new HashSet<>(signalNames());
    known.addAll(List.of(TIME, AIR, PRESSURE, HUMIDITY, SUPPLY, TERMINAL));
    return known;
  }

  /** Whether a recording has a column of this name of its own, or it is none. */
  public static boolean isOwn(String name) {
    return name.isEmpty() || name.equals(RunFileWriter.GAP) || known().contains(name);
  }

  /** The names of all columns that a signal may stand in. */
  static List<String> signalNames() {
    return Arrays.stream(SignalUnit.values()).map(SignalUnit::column).toList();
  }

  public boolean has(String name) {
    return names.contains(name);
  }

  /**
   * Index of the column with the terminal temperature of a compensated meter, −1 for another input.
   * Where it has no column of its own, the air's counts, which a note says.
   */
  Checked<Integer> terminal(SignalChain.Input input, String file) {
    if (input != SignalChain.Input.COMPENSATED_C) {
      return Checked.ok(-1);
    }
    if (has(TERMINAL)) {
      return Checked.ok(index(TERMINAL));
    }
    return has(AIR)
        ? Checked.ok(
            index(AIR),
            List.of(Problem.warning("file.terminal-from-air", Where.file(file).atColumn(AIR), "")))
        : Checked.refused(Problem.error("file.terminal-missing", Where.file(file), "", TERMINAL));
  }

  int index(String name) {
    return names.indexOf(name);
  }
}
