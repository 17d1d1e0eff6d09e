package faintwind.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * The cells of one line of text with commas between them (RFC 4180), or with semicolons or tabs as
 * local spreadsheets write them; there the decimal mark may be a comma. A cell cannot span lines
 * here: in a record of readings a stray quotation mark must not swallow the rows after it. Reused
 * from line to line.
 */
public final class CsvLine {
  private final char delimiter;
  private final CsvReader.CsvReaderBuilder quoted;
  private final Decimals decimals = new Decimals();

  private byte[] bytes = new byte[0];
  private int[] from = new int[16];
  private int[] to = new int[16];
  private int count;
  private double found;
  private boolean sound;

  /** Lines with commas between their cells. */
  public CsvLine() {
    this(',');
  }

  /** Lines with this character between their cells. */
  public CsvLine(char delimiter) {
    this.delimiter = delimiter;
    this.quoted = CsvReader.builder().fieldSeparator(delimiter).allowUnclosedQuote(false);
  }

  /** Takes the cells of the line that {@code lines} stands on. */
  public void read(TextLines lines) {
    count = 0;
    sound = true;
    if (!lines.isPlain() && lines.contains('"')) {
      readQuoted(lines.text());
      return;
    }
    byte[] all = lines.bytes();
    bytes = all;
    int start = lines.start();
    int end = lines.end();
    char between = delimiter;
    for (int i = start; i < end; i++) {
      if (all[i] == between) {
        add(start, i);
        start = i + 1;
      }
    }
    add(start, end);
  }

  private void readQuoted(String text) {
    List<String> cells = new ArrayList<>();
    try {
      cells.addAll(quoted.ofSingleCsvRecord(text).getFields());
    } catch (CsvParseException e) {
      // quotation marks that do not pair: the cells cannot be told apart
      sound = false;
      cells.addAll(List.of(text.split(Pattern.quote(String.valueOf(delimiter)), -1)));
    }
    bytes = String.join("", cells).getBytes(StandardCharsets.UTF_8);
    int start = 0;
    for (String cell : cells) {
      int length = cell.getBytes(StandardCharsets.UTF_8).length;
      add(start, start + length);
      start += length;
    }
  }

  private void add(int start, int end) {
    if (count == from.length) {
      from = Arrays.copyOf(from, count * 2);
      to = Arrays.copyOf(to, count * 2);
    }
    from[count] = start;
    to[count] = end;
    count++;
  }

  public int count() {
    return count;
  }

  /** Whether the quotation marks of this line pair. */
  public boolean isSound() {
    return sound;
  }

  /** A cell without the blanks around it; empty where the line is too short. */
  public String text(int index) {
    return index < count ? TextLines.decoded(bytes, from[index], to[index]).strip() : "";
  }

  /** The number in a cell, where there is one. */
  public OptionalDouble number(int index) {
    if (index >= count) {
      return OptionalDouble.empty();
    }
    return delimiter == ','
        ? NumberCell.parse(bytes, from[index], to[index])
        : decimals.number(text(index));
  }

  /**
   * Whether there is a number in a cell, which {@link #found} tells until the next is looked for.
   */
  public boolean find(int index) {
    if (index < count && delimiter == ',') {
      found = NumberCell.plain(bytes, from[index], to[index]);
      if (!Double.isNaN(found)) {
        return true;
      }
    }
    OptionalDouble number = number(index);
    found = number.orElse(0);
    return number.isPresent();
  }

  /** The number that was found last. */
  public double found() {
    return found;
  }

  /** Message id that says why a cell is not a number. */
  public String complaint(String cell) {
    return delimiter == ',' ? NumberCell.complaint(cell) : decimals.complaint(cell);
  }

  /** Whether commas stand between the cells. */
  public boolean hasCommas() {
    return delimiter == ',';
  }

  /** A cell as it stands in a file with commas between its cells: numbers with decimal points. */
  public String plain(int index) {
    return decimals.plain(text(index));
  }

  public boolean isEmpty(int index) {
    return text(index).isEmpty();
  }

  public List<String> texts() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      all.add(text(i));
    }
    return all;
  }
}
