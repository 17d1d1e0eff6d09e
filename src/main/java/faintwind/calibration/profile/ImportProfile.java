package faintwind.calibration.profile;

import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.run.SignalUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What the lines of a logger mean.
 *
 * @param id short name, the file's own
 * @param name for people
 * @param lines how a line is cut into cells
 * @param time where the time stands, and in what form
 * @param columns the other columns that are used; the rest of a line is left alone
 */
public record ImportProfile(
    String id, String name, LineForm lines, TimeColumn time, List<ValueColumn> columns) {
  public ImportProfile {
    columns = List.copyOf(columns);
  }

  /** The same for the lines that a sheet becomes. */
  public ImportProfile ofSheet() {
    return new ImportProfile(id, name, lines.ofSheet(), time, columns);
  }

  /** Unit of the signal in the run file that comes of it. */
  public SignalUnit unit() {
    return columns.stream()
        .filter(column -> column.meaning() == Meaning.SIGNAL)
        .findFirst()
        .flatMap(column -> column.unit().signal())
        .orElse(SignalUnit.DELTA_K);
  }

  /** Columns beside time and signal in the run file that comes of it. */
  public Set<LiveColumn> liveColumns() {
    Set<LiveColumn> all = EnumSet.noneOf(LiveColumn.class);
    columns.forEach(column -> column.meaning().column().ifPresent(all::add));
    return all;
  }

  /** Whether columns are named, so that a row of names has to come before the first reading. */
  public boolean needsNames() {
    return time.column().filter(ColumnRef::isNamed).isPresent()
        || time.date().filter(ColumnRef::isNamed).isPresent()
        || columns.stream().anyMatch(column -> column.column().isNamed());
  }

  /**
   * The profile of this program's own run files, for lines that begin with their header.
   *
   * @param names the header's cells, {@code time_s} and a signal among them
   * @param unit unit of the signal
   */
  public static ImportProfile runFile(List<String> names, SignalUnit unit) {
    List<ValueColumn> columns = new ArrayList<>();
    columns.add(ValueColumn.named(unit.column(), Meaning.SIGNAL, ValueUnit.of(unit)));
    for (Meaning meaning : Meaning.values()) {
      meaning
          .column()
          .filter(column -> names.contains(column.column()))
          .ifPresent(
              column ->
                  columns.add(ValueColumn.named(column.column(), meaning, meaning.ownUnit())));
    }
    return new ImportProfile(
        "run-file", "", LineForm.RUN_FILE, TimeColumn.seconds(ColumnRef.named("time_s")), columns);
  }
}
