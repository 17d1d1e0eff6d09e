package faintwind.files.run;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import faintwind.files.HeadName;
import faintwind.files.InputFile;
import faintwind.files.ProblemList;
import faintwind.files.TextLines;
import faintwind.files.table.TableSource;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A small table with a header row (RFC 4180), read whole: each row as its cells by column name. A
 * cell in quotation marks may span lines. Sheets are tables too, and so is text with semicolons or
 * tabs; which it is, the known names in the header tell.
 *
 * @param columns names in the header, in order
 * @param rows rows in order, without those whose cells cannot be told apart
 * @param problems doubled columns, and rows with a wrong number of cells
 * @param numbers how the numbers in its cells are read
 */
public record TableFile(
    List<String> columns, List<Row> rows, List<Problem> problems, TableNumbers numbers) {
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

  /** A number of a row, in the unit of its column; empty where the cell holds none. */
  public OptionalDouble number(Row row, String column) {
    return numbers.read(column, row.cell(column));
  }

  /** Message id that says why a cell is not a number. */
  public String complaint(String cell) {
    return numbers.complaint(cell);
  }

  /**
   * The table of a file, or why it is none.
   *
   * @param known names that a column may have
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<TableFile> read(Path path, String name, Set<String> known)
      throws IOException {
    return text(path, name).then(text -> parse(text, name, known));
  }

  /** The text of a table, a sheet as lines with commas. */
  static Checked<String> text(Path path, String name) throws IOException {
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    Checked<TableSource> opened = TableSource.open(Files.newInputStream(path), name);
    if (!(opened instanceof Checked.Ok<TableSource> ok)) {
      return Checked.refused(opened.problems());
    }
    try (TableSource source = ok.value()) {
      byte[] bytes = source.in().readAllBytes();
      return Checked.ok(true, ok.notes()).then(nothing -> text(bytes, Where.file(name)));
    }
  }

  private static Checked<String> text(byte[] bytes, Where where) {
    for (byte b : bytes) {
      if (b == 0) {
        return Checked.refused(Problem.error("file.binary", where, ""));
      }
    }
    String text = TextLines.decoded(bytes, 0, bytes.length);
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return plain.isBlank()
        ? Checked.refused(Problem.error("file.empty", where, ""))
        : Checked.ok(plain);
  }

  private static Checked<TableFile> parse(String text, String name, Set<String> known) {
    List<CsvRecord> records = new ArrayList<>();
    char delimiter = TableNumbers.delimiter(text, known);
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(delimiter)
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
    List<HeadName> heads =
        records.get(0).getFields().stream()
            .map(head -> TableNumbers.head(head.strip(), known))
            .toList();
    return Checked.ok(table(records, heads, new TableNumbers(delimiter, heads), Where.file(name)));
  }

  private static TableFile table(
      List<CsvRecord> records, List<HeadName> heads, TableNumbers numbers, Where where) {
    ProblemList problems = new ProblemList();
    CsvRecord head = records.get(0);
    List<String> columns = heads.stream().map(HeadName::name).toList();
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
    return new TableFile(columns, rows, problems.list(), numbers);
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
