package faintwind.files.table;

import faintwind.files.TextLines;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The first lines of a table, to be looked at.
 *
 * @param lines without a byte-order mark, cut at 400 characters
 * @param form what the table is
 */
public record FirstLines(List<String> lines, TableSource.Form form) {
  private static final int LONGEST = 400;

  public FirstLines {
    lines = List.copyOf(lines);
  }

  /**
   * Reads them; refused where the file cannot be read as a table at all.
   *
   * @throws IOException where the file is not there, or the disk or a permission fails
   */
  public static Checked<FirstLines> of(Path file, int count) throws IOException {
    Checked<TableSource> opened =
        TableSource.open(Files.newInputStream(file), String.valueOf(file.getFileName()));
    if (!(opened instanceof Checked.Ok<TableSource> ok)) {
      return Checked.refused(opened.problems());
    }
    List<String> first = new ArrayList<>();
    try (TableSource source = ok.value()) {
      TextLines lines = new TextLines(source.in());
      boolean plain = true;
      while (first.size() < count && lines.next()) {
        String text = lines.text();
        plain &= lines.isUtf8();
        first.add(text.length() <= LONGEST ? text : text.substring(0, LONGEST));
      }
      boolean local = !plain && source.form() == TableSource.Form.UTF_8;
      TableSource.Form form = local ? TableSource.Form.WINDOWS_1252 : source.form();
      return Checked.ok(new FirstLines(first, form), ok.notes());
    }
  }
}
