package faintwind.files.run;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import faintwind.files.AtomicFile;
import faintwind.files.TextLines;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Numbers put into one row of a runs table; its comments, its other cells, its separator and its
 * decimal mark stay. Columns that the table lacks are put behind the others.
 */
public final class TurnsInTable {
  private static final int DIGITS = 9;

  private TurnsInTable() {}

  /**
   * The table with the cells of one run filled.
   *
   * @param cells by column name; an empty number empties the cell
   * @return refused where the table cannot be read as text or has no such run
   */
  public static Checked<byte[]> filled(Path table, String run, Map<String, OptionalDouble> cells)
      throws IOException {
    String name = String.valueOf(table.getFileName());
    Checked<TableFile> read = TableFile.read(table, name, RunsTableRules.KNOWN);
    if (!(read instanceof Checked.Ok<TableFile> ok)) {
      return Checked.refused(read.problems());
    }
    byte[] bytes = Files.readAllBytes(table);
    String text = TextLines.decoded(bytes, 0, bytes.length);
    List<TableFile.Row> rows =
        ok.value().rows().stream().filter(r -> r.cell("run").equals(run)).toList();
    if (rows.size() != 1 || text.indexOf('\0') >= 0) {
      return Checked.refused(Problem.error("clicks.no-run", Where.file(name), run));
    }
    return Checked.ok(
        with(text, ok.value().columns(), rows.get(0).line(), cells)
            .getBytes(StandardCharsets.UTF_8));
  }

  /** Writes it, whole or not at all. */
  public static void write(byte[] filled, Path target) throws IOException {
    AtomicFile.write(target, filled);
  }

  private static String with(
      String text, List<String> columns, int line, Map<String, OptionalDouble> cells)
      throws IOException {
    char delimiter = TableNumbers.delimiter(text, RunsTableRules.KNOWN);
    boolean comma = delimiter != ',' && text.matches("(?s).*\\d,\\d.*");
    Map<String, String> wanted = new LinkedHashMap<>();
    cells.forEach((column, value) -> wanted.put(column, written(value, comma)));
    List<String> more = wanted.keySet().stream().filter(c -> !columns.contains(c)).toList();
    StringWriter out = new StringWriter();
    boolean header = true;
    try (CsvReader<CsvRecord> reader =
            CsvReader.builder()
                .fieldSeparator(delimiter)
                .commentStrategy(CommentStrategy.READ)
                .ofCsvRecord(text);
        CsvWriter writer = CsvWriter.builder().fieldSeparator(delimiter).build(out)) {
      for (CsvRecord record : reader) {
        if (record.isComment()) {
          writer.writeComment(record.getField(0));
          continue;
        }
        List<String> row = new ArrayList<>(record.getFields());
        boolean here = record.getStartingLineNumber() == line;
        for (int i = 0; here && i < columns.size(); i++) {
          row.set(i, wanted.getOrDefault(columns.get(i), row.get(i)));
        }
        for (String column : more) {
          row.add(header ? column : here ? wanted.getOrDefault(column, "") : "");
        }
        header = false;
        writer.writeRecord(row);
      }
    }
    return out.toString();
  }

  private static String written(OptionalDouble value, boolean comma) {
    String text = value.isPresent() ? Numerals.digits(value.getAsDouble(), DIGITS) : "";
    return comma ? text.replace('.', ',') : text;
  }
}
