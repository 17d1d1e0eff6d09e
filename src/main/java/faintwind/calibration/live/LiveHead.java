package faintwind.calibration.live;

import faintwind.calibration.Provenance;
import faintwind.calibration.run.SignalUnit;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What is known of a recording before its first row.
 *
 * @param unit unit of the signal
 * @param columns what the source tells beside time and signal
 * @param provenance measured or made up
 * @param source where the rows come from, as a person would write it
 * @param others columns that mean nothing here and pass through as they are
 */
public record LiveHead(
    SignalUnit unit,
    Set<LiveColumn> columns,
    Provenance provenance,
    String source,
    List<String> others) {
  /** Without columns that mean nothing here. */
  public LiveHead(SignalUnit unit, Set<LiveColumn> columns, Provenance provenance, String source) {
    this(unit, columns, provenance, source, List.of());
  }

  public LiveHead {
    EnumSet<LiveColumn> own = EnumSet.noneOf(LiveColumn.class);
    own.addAll(columns);
    columns = Collections.unmodifiableSet(own);
    others = List.copyOf(others);
  }
}
