package faintwind.files.run;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import faintwind.message.Checked;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A runs table once more, cell for cell as it was, so that some cells of a column can be written
 * anew; comments fall away. Mutable; for one table.
 */
final class RewrittenTable {
  private final char delimiter;
  private final List<List<String>> rows;

  private RewrittenTable(char delimiter, List<List<String>> rows) {
    this.delimiter = delimiter;
    this.rows = rows;
  }

  /**
   * Reads a table.
   *
   * @throws IOException where the disk or a permission fails
   */
  static Checked<RewrittenTable> of(Path table) throws IOException {
    return TableFile.text(table, table.toString()).map(RewrittenTable::of);
  }

  private static RewrittenTable of(String text) {
    char delimiter = TableNumbers.delimiter(text, RunsTableRules.KNOWN);
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .commentStrategy(CommentStrategy.SKIP)
            .skipEmptyLines(true)
            .ofCsvRecord(text)) {
      reader.forEach(record -> rows.add(new ArrayList<>(record.getFields())));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the text is in memory
    }
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    rows.forEach(row -> pad(row, width));
    return new RewrittenTable(delimiter, rows);
  }

  private static void pad(List<String> row, int width) {
    while (row.size() < width) {
      row.add("");
    }
  }

  /** Whether its numbers may have decimal commas. */
  boolean hasDecimalCommas() {
    return delimiter != ',';
  }

  /** How many runs it has. */
  int size() {
    return rows.size() - 1;
  }

  /** A cell of a run, from 0; empty where there is no such column. */
  String cell(int run, String column) {
    int at = column(column);
    return at < 0 ? "" : rows.get(run + 1).get(at).strip();
  }

  /** Writes a cell anew; a column that is not there is added. */
  void set(int run, String column, String text) {
    if (column(column) < 0) {
      rows.get(0).add(column);
      rows.subList(1, rows.size()).forEach(row -> row.add(""));
    }
    rows.get(run + 1).set(column(column), text);
  }

  private int column(String wanted) {
    List<String> head = rows.get(0);
    for (int i = 0; i < head.size(); i++) {
      if (TableNumbers.head(head.get(i).strip(), RunsTableRules.KNOWN).name().equals(wanted)) {
        return i;
      }
    }
    return -1;
  }

  /** The table's text as it is now. */
  String text() {
    StringWriter out = new StringWriter();
    try (CsvWriter csv =
        CsvWriter.builder().fieldSeparator(delimiter).lineDelimiter(LineDelimiter.LF).build(out)) {
      rows.forEach(csv::writeRecord);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the text is in memory
    }
    return out.toString();
  }
}
