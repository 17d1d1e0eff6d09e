package faintwind.calibration.profile;

import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveSample;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a profile makes of the first lines of a log: the live preview of an import.
 *
 * @param columns names of the columns of the run file that comes of it
 * @param rows one a reading
 * @param problems what did not fit, with its line and the field of the profile
 * @param start date and time of the first reading by ISO 8601, where the lines tell a date
 */
public record Understood(
    List<String> columns, List<Row> rows, List<Problem> problems, Optional<String> start) {
  public Understood {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /**
   * One reading.
   *
   * @param line number of its line, from 1
   * @param cells in the order of the columns; a time is empty where that of arrival counts
   */
  public record Row(int line, List<OptionalDouble> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * Reads the lines.
   *
   * @param lines the first lines of the log, from its beginning
   * @param profile what they mean
   * @param begin whether they begin with the header
   * @param source how problems name the log
   */
  public static Understood of(
      List<String> lines, ImportProfile profile, LineReader.Begin begin, String source) {
    LineReader reader = new LineReader(profile, begin, source);
    List<LiveColumn> others = List.copyOf(profile.liveColumns());
    List<Row> rows = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Optional<String> start = Optional.empty();
    for (String line : lines) {
      LineOutcome outcome = reader.read(line);
      start = start.or(reader::stamp);
      if (outcome instanceof LineOutcome.Row row) {
        rows.add(row(reader.lines(), row.sample(), others));
        problems.addAll(row.notes());
      } else if (outcome instanceof LineOutcome.Unreadable bad) {
        problems.addAll(bad.problems());
      }
    }
    List<String> names = new ArrayList<>(List.of("time_s", profile.unit().column()));
    others.forEach(column -> names.add(column.column()));
    return new Understood(names, rows, problems, start);
  }

  private static Row row(int line, LiveSample sample, List<LiveColumn> others) {
    List<OptionalDouble> cells = new ArrayList<>(List.of(sample.time_s(), sample.signal()));
    others.forEach(column -> cells.add(column.value(sample)));
    return new Row(line, cells);
  }
}
