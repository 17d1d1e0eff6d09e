package faintwind.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The cells of one line of comma-separated text (RFC 4180). A cell cannot span lines here: in a
 * record of readings a stray quotation mark must not swallow the rows after it. Reused from line to
 * line.
 */
public final class CsvLine {
  private final CsvReader.CsvReaderBuilder quoted = CsvReader.builder().allowUnclosedQuote(false);

  private byte[] bytes = new byte[0];
  private int[] from = new int[16];
  private int[] to = new int[16];
  private int count;
  private boolean sound;

  /** Takes the cells of the line that {@code lines} stands on. */
  public void read(TextLines lines) {
    count = 0;
    sound = true;
    if (lines.contains('"')) {
      readQuoted(lines.text());
      return;
    }
    bytes = lines.bytes();
    int start = lines.start();
    for (int i = start; i < lines.end(); i++) {
      if (bytes[i] == ',') {
        add(start, i);
        start = i + 1;
      }
    }
    add(start, lines.end());
  }

  private void readQuoted(String text) {
    List<String> cells = new ArrayList<>();
    try {
      cells.addAll(quoted.ofSingleCsvRecord(text).getFields());
    } catch (CsvParseException e) {
      // quotation marks that do not pair: the cells cannot be told apart
      sound = false;
      cells.addAll(List.of(text.split(",", -1)));
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
    return index < count
        ? new String(bytes, from[index], to[index] - from[index], StandardCharsets.UTF_8).strip()
        : "";
  }

  /** The number in a cell, where there is one. */
  public OptionalDouble number(int index) {
    return index < count ? NumberCell.parse(bytes, from[index], to[index]) : OptionalDouble.empty();
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
