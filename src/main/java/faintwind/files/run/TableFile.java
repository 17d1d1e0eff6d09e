package faintwind.files.run;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import faintwind.files.InputFile;
import faintwind.files.ProblemList;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A small table with a header row (RFC 4180), read whole: each row as its cells by column name. A
 * cell in quotation marks may span lines.
 *
 * @param columns names in the header, in order
 * @param rows rows in order, without those whose cells cannot be told apart
 * @param problems doubled columns, and rows with a wrong number of cells
 */
public record TableFile(List<String> columns, List<Row> rows, List<Problem> problems) {
  private static final long LARGEST_BYTES = 16L << 20;

  public TableFile {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /** One row; cells without the blanks around them. */
  public record Row(int line, Map<String, String> cells) {
    public Row {
      cells = Map.copyOf(cells);
    }

    /** A cell; empty where there is no such column. */
    public String cell(String column) {
      return cells.getOrDefault(column, "");
    }
  }

  /**
   * The table of a file, or why it is none.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<TableFile> read(Path path, String name) throws IOException {
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    return text(Files.readAllBytes(path), Where.file(name)).then(text -> parse(text, name));
  }

  private static Checked<String> text(byte[] bytes, Where where) {
    int first = bytes.length < 2 ? 0 : bytes[0] & 0xFF;
    int second = bytes.length < 2 ? 0 : bytes[1] & 0xFF;
    if ((first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF)) {
      return Checked.refused(Problem.error("file.utf16", where, ""));
    }
    for (byte b : bytes) {
      if (b == 0) {
        return Checked.refused(Problem.error("file.binary", where, ""));
      }
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      return plain.isBlank()
          ? Checked.refused(Problem.error("file.empty", where, ""))
          : Checked.ok(plain);
    } catch (CharacterCodingException e) {
      return Checked.refused(Problem.error("file.not-utf8", where, ""));
    }
  }

  private static Checked<TableFile> parse(String text, String name) {
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.SKIP)
            .skipEmptyLines(true)
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      reader.forEach(records::add);
    } catch (CsvParseException e) {
      int line = records.isEmpty() ? 1 : line(records.get(records.size() - 1)) + 1;
      return Checked.refused(Problem.error("runs.quotes", Where.file(name).atLine(line), ""));
    } catch (IOException e) {
      // the text is in memory: closing its reader cannot fail
      throw new UncheckedIOException(e);
    }
    if (records.isEmpty()) {
      return Checked.refused(Problem.error("file.empty", Where.file(name), ""));
    }
    return table(records, Where.file(name));
  }

  private static Checked<TableFile> table(List<CsvRecord> records, Where where) {
    ProblemList problems = new ProblemList();
    CsvRecord head = records.get(0);
    List<String> columns = head.getFields().stream().map(String::strip).toList();
    String all = LogHead.excerpt(String.join(", ", columns));
    if (columns.size() == 1 && (all.contains(";") || head.getField(0).contains("\t"))) {
      String id = all.contains(";") ? "file.semicolons" : "file.tabs";
      return Checked.refused(Problem.error(id, where.atLine(line(head)), all));
    }
    Set<String> seen = new LinkedHashSet<>();
    for (String column : columns) {
      if (!column.isEmpty() && !seen.add(column)) {
        problems.error("file.column-doubled", where.atLine(line(head)).atColumn(column), column);
      }
    }
    List<Row> rows = new ArrayList<>();
    for (CsvRecord record : records.subList(1, records.size())) {
      if (record.getFields().stream().allMatch(String::isBlank)) {
        continue; // spreadsheets leave such rows at the end
      }
      if (record.getFieldCount() == columns.size()) {
        rows.add(row(record, columns));
      } else {
        String found = String.valueOf(record.getFieldCount());
        String expected = String.valueOf(columns.size());
        problems.error("runs.cells-count", where.atLine(line(record)), found, expected);
      }
    }
    return Checked.ok(new TableFile(columns, rows, problems.list()));
  }

  private static Row row(CsvRecord record, List<String> columns) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      cells.put(columns.get(i), record.getField(i).strip());
    }
    return new Row(line(record), cells);
  }

  private static int line(CsvRecord record) {
    return (int) record.getStartingLineNumber();
  }
}
