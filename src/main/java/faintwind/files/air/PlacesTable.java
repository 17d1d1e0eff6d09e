package faintwind.files.air;

import faintwind.files.ProblemList;
import faintwind.files.RowText;
import faintwind.files.run.LogHead;
import faintwind.files.run.TableFile;
import faintwind.message.Checked;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The table of a survey: {@code place}, then when the instrument was there or what it read. */
public final class PlacesTable {
  private static final String PLACE = "place";

  private PlacesTable() {}

  /** A table of rows as they were filled in. */
  public static String text(List<MeasuredRow> rows) {
    StringBuilder text = new StringBuilder(PLACE + "," + MeasuredRow.head() + "\n");
    for (MeasuredRow row : rows) {
      text.append(RowText.harmless(row.name())).append(',').append(row.cells()).append('\n');
    }
    return text.toString();
  }

  /**
   * Its rows in the order in which the places were visited.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<List<MeasuredRow>> read(Path path) throws IOException {
    String name = path.toString();
    Where where = Where.file(name);
    return TableFile.read(path, name, MeasuredRow.columns(PLACE))
        .then(
            table -> {
              ProblemList problems = new ProblemList();
              problems.addAll(table.problems());
              List<MeasuredRow> rows = new ArrayList<>();
              if (table.columns().contains(PLACE)) {
                rows.addAll(MeasuredRow.read(table, PLACE, where, problems));
              } else {
                String found = LogHead.excerpt(String.join(", ", table.columns()));
                problems.error("file.column-missing", where.atLine(1), found, PLACE);
              }
              if (!problems.hasErrors() && rows.size() < 2) {
                problems.error("survey.one-place", where, String.valueOf(rows.size()));
              }
              return problems.hasErrors()
                  ? Checked.refused(problems.list())
                  : Checked.ok(rows, problems.list());
            });
  }
}
