package faintwind.calibration.draft;

import faintwind.calibration.profile.LineForm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The first lines of a log as a table.
 *
 * @param delimiter between its cells
 * @param head the lines before the first row, cut into cells
 * @param rows lines that hold readings; each has the same number of cells
 */
record SampleTable(char delimiter, List<List<String>> head, List<List<String>> rows) {
  /** In the order in which they are tried: the first that cuts nearly every line alike. */
  private static final char[] DELIMITERS = {';', '\t', '|', ',', ' '};

  private static final double NEARLY_ALL = 0.8;

  SampleTable {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
  }

  /** Empty where no delimiter makes a table of the lines. */
  static Optional<SampleTable> of(List<String> lines) {
    for (char delimiter : DELIMITERS) {
      Optional<SampleTable> table = of(lines, delimiter);
      if (table.isPresent()) {
        return table;
      }
    }
    return Optional.empty();
  }

  private static Optional<SampleTable> of(List<String> lines, char delimiter) {
    List<List<String>> cells = lines.stream().map(l -> LineForm.cells(l, delimiter)).toList();
    int begin = 0;
    while (begin < cells.size() && !isRow(cells.get(begin))) {
      begin++;
    }
    List<List<String>> rest =
        cells.subList(begin, cells.size()).stream().filter(SampleTable::isThere).toList();
    int width = usual(rest);
    List<List<String>> rows = rest.stream().filter(row -> row.size() == width).toList();
    return width < 2 || rows.size() < NEARLY_ALL * rest.size()
        ? Optional.empty()
        : Optional.of(new SampleTable(delimiter, cells.subList(0, begin), rows));
  }

  private static boolean isThere(List<String> row) {
    return row.stream().anyMatch(cell -> !cell.isEmpty());
  }

  /**
   * Whether at least half of what stands there is a number or a time, and there is more than one.
   */
  private static boolean isRow(List<String> row) {
    long there = row.stream().filter(cell -> !cell.isEmpty()).count();
    long values = row.stream().filter(SampleCell::isValue).count();
    return values > 1 && 2 * values >= there;
  }

  private static int usual(List<List<String>> rows) {
    Map<Integer, Integer> counts = new HashMap<>();
    rows.forEach(row -> counts.merge(row.size(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  int width() {
    return rows.get(0).size();
  }

  /** What stands in a column, from 0; empty cells are left out. */
  List<String> column(int index) {
    return rows.stream().map(row -> row.get(index)).filter(cell -> !cell.isEmpty()).toList();
  }

  /** Number of the line with the names, from 1; empty where there is none. */
  OptionalInt namesLine() {
    for (int line = head.size(); line > 0; line--) {
      List<String> cells = head.get(line - 1);
      if (cells.size() == width() && !isUnits(cells)) {
        return OptionalInt.of(line);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean isUnits(List<String> cells) {
    List<String> there = cells.stream().filter(cell -> !cell.isEmpty()).toList();
    return !there.isEmpty() && there.stream().allMatch(SampleUnit::isUnit);
  }

  /** What the lines of the head say over a column: its name, then a unit in a row of its own. */
  List<String> heads(int column) {
    List<String> heads = new ArrayList<>();
    if (namesLine().isPresent()) {
      int line = namesLine().getAsInt();
      heads.add(head.get(line - 1).get(column));
      for (List<String> below : head.subList(line, head.size())) {
        if (below.size() == width()) {
          heads.add(below.get(column));
        }
      }
    }
    return heads;
  }
}
