package faintwind.files.run;

import faintwind.calibration.run.NotCounted;
import faintwind.files.NumberCell;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A runs table once more, with cells that a person changed on purpose. */
public final class LeftOutTable {
  private static final String COLUMN = "left_out_s";
  private static final String NOTE = "note";

  private LeftOutTable() {}

  /**
   * The table with what is left out of a run.
   *
   * @param run name of the run
   * @param notCounted what is left out of it from now on; nothing takes everything back
   * @param reason why, kept in the run's note
   * @return the new table's text; refused where the table cannot be read or has no such run
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<String> of(Path table, String run, NotCounted notCounted, String reason)
      throws IOException {
    return RewrittenTable.of(table)
        .then(
            found -> {
              List<Integer> rows = rows(found, run);
              for (int row : rows) {
                found.set(row, COLUMN, words(notCounted, found.hasDecimalCommas()));
                found.set(row, NOTE, notCounted.noted(found.cell(row, NOTE), reason));
              }
              return rows.isEmpty()
                  ? Checked.refused(
                      Problem.error("runs.no-such-run", Where.file(table.toString()), run))
                  : Checked.ok(found.text());
            });
  }

  private static List<Integer> rows(RewrittenTable table, String run) {
    return IntStream.range(0, table.size())
        .filter(i -> table.cell(i, "run").equals(run))
        .boxed()
        .toList();
  }

  /** The cell; with the decimal mark that the table's own numbers have. */
  private static String words(NotCounted notCounted, boolean decimalCommas) {
    if (notCounted.isAll()) {
      return NotCounted.WORD_ALL;
    }
    String text =
        notCounted.stretches().stream()
            .map(s -> NumberCell.shown(s.from_s()) + "-" + NumberCell.shown(s.to_s()))
            .collect(Collectors.joining("; "));
    return decimalCommas ? text.replace('.', ',') : text;
  }

  /** The recordings that a table names. */
  public static Checked<List<String>> recordings(Path table) throws IOException {
    return RewrittenTable.of(table)
        .map(
            found ->
                List.copyOf(
                    new TreeSet<>(
                        IntStream.range(0, found.size())
                            .mapToObj(i -> found.cell(i, "file"))
                            .toList())));
  }

  /** The table with other recordings in the place of those it names. */
  public static Checked<String> renamed(Path table, Map<String, String> names) throws IOException {
    Map<String, String> fresh = new TreeMap<>(names);
    return RewrittenTable.of(table)
        .map(
            found -> {
              for (int i = 0; i < found.size(); i++) {
                String was = found.cell(i, "file");
                found.set(i, "file", fresh.getOrDefault(was, was));
              }
              return found.text();
            });
  }
}
