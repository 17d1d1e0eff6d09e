package faintwind.files.run;

import faintwind.calibration.run.SignalUnit;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The head of a run file or field log: its columns in their order, which of them carries the
 * signal, and when time 0 was.
 *
 * @param names every column, unknown ones too
 * @param unit unit of the signal
 * @param start when {@code time_s} was 0
 */
public record LogColumns(List<String> names, SignalUnit unit, Optional<OffsetDateTime> start) {
  static final String TIME = "time_s";
  static final String AIR = "air_C";
  static final String PRESSURE = "pressure_hPa";
  static final String HUMIDITY = "rh_pct";
  static final String SUPPLY = "supply_V";

  /** Temperature of a compensated meter's own terminals. */
  static final String TERMINAL = "terminal_C";

  public LogColumns {
    names = List.copyOf(names);
  }

  /** The names of all columns that a signal may stand in. */
  static List<String> signalNames() {
    return Arrays.stream(SignalUnit.values()).map(SignalUnit::column).toList();
  }

  public boolean has(String name) {
    return names.contains(name);
  }

  int index(String name) {
    return names.indexOf(name);
  }
}
