package faintwind.files.run;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import faintwind.calibration.run.NotCounted;
import faintwind.files.NumberCell;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A runs table once more, with what a person leaves out of one of its runs. */
public final class LeftOutTable {
  private static final String COLUMN = "left_out_s";

  private LeftOutTable() {}

  /**
   * The table as it is, cell for cell, but for what is left out of a run; comments fall away.
   *
   * @param run name of the run
   * @param notCounted what is left out of it from now on; nothing takes everything back
   * @return the new table's text; refused where the table cannot be read or has no such run
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<String> of(Path table, String run, NotCounted notCounted)
      throws IOException {
    String name = table.toString();
    return TableFile.text(table, name).then(text -> marked(text, run, notCounted, name));
  }

  private static Checked<String> marked(
      String text, String run, NotCounted notCounted, String name) {
    char delimiter = TableNumbers.delimiter(text, RunsTableRules.KNOWN);
    List<List<String>> rows = rows(text, delimiter);
    int names = column(rows.get(0), "run");
    List<String> head = new ArrayList<>(rows.get(0));
    int mark = column(head, COLUMN);
    if (mark < 0) {
      mark = head.size();
      head.add(COLUMN);
    }
    StringWriter out = new StringWriter();
    boolean found = false;
    try (CsvWriter csv =
        CsvWriter.builder().fieldSeparator(delimiter).lineDelimiter(LineDelimiter.LF).build(out)) {
      csv.writeRecord(head);
      for (List<String> row : rows.subList(1, rows.size())) {
        List<String> cells = new ArrayList<>(row);
        while (cells.size() < head.size()) {
          cells.add("");
        }
        if (names >= 0 && cells.get(names).strip().equals(run)) {
          cells.set(mark, words(notCounted, delimiter));
          found = true;
        }
        csv.writeRecord(cells);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the text is in memory
    }
    return found
        ? Checked.ok(out.toString())
        : Checked.refused(Problem.error("runs.no-such-run", Where.file(name), run));
  }

  private static List<List<String>> rows(String text, char delimiter) {
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .commentStrategy(CommentStrategy.SKIP)
            .skipEmptyLines(true)
            .ofCsvRecord(text)) {
      reader.forEach(record -> rows.add(record.getFields()));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the text is in memory
    }
    return rows;
  }

  private static int column(List<String> head, String wanted) {
    for (int i = 0; i < head.size(); i++) {
      if (TableNumbers.head(head.get(i).strip(), RunsTableRules.KNOWN).name().equals(wanted)) {
        return i;
      }
    }
    return -1;
  }

  /** The cell; with the decimal mark that the table's own numbers have. */
  private static String words(NotCounted notCounted, char delimiter) {
    if (notCounted.isAll()) {
      return NotCounted.WORD_ALL;
    }
    String text =
        notCounted.stretches().stream()
            .map(s -> NumberCell.shown(s.from_s()) + "-" + NumberCell.shown(s.to_s()))
            .collect(Collectors.joining("; "));
    return delimiter == ',' ? text : text.replace('.', ',');
  }
}
