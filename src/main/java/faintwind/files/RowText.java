package faintwind.files;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Text of rows that pass through: whatever stood there, with exactly the header's cells. */
public final class RowText {
  private static final String FORMULA = "=+-@\t\r";
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d*)?([eE][+-]?\\d+)?");

  private RowText() {}

  /**
   * The row with {@code count} cells. Missing cells are added empty; what is too many, or cannot be
   * told apart, stands in the last cell.
   */
  public static String fitted(String text, CsvLine cells, int count) {
    if (!cells.isSound()) {
      return quoted(text) + ",".repeat(count - 1);
    }
    List<String> all = cells.texts();
    if (!cells.hasCommas()) {
      return fitted(plain(cells), count);
    }
    if (all.size() < count) {
      return text + ",".repeat(count - all.size());
    }
    return fitted(all, count);
  }

  /** The cells of a row with semicolons or tabs, with commas between them. */
  public static String rejoined(CsvLine cells) {
    return String.join(",", plain(cells).stream().map(RowText::plainOrQuoted).toList());
  }

  private static List<String> plain(CsvLine cells) {
    return IntStream.range(0, cells.count()).mapToObj(cells::plain).toList();
  }

  private static String fitted(List<String> all, int count) {
    List<String> fitted = new ArrayList<>();
    if (all.size() < count) {
      all.forEach(cell -> fitted.add(plainOrQuoted(cell)));
      return String.join(",", fitted) + ",".repeat(count - all.size());
    }
    for (String cell : all.subList(0, count - 1)) {
      fitted.add(plainOrQuoted(cell));
    }
    fitted.add(plainOrQuoted(String.join(",", all.subList(count - 1, all.size()))));
    return String.join(",", fitted);
  }

  /** A cell, in quotation marks where RFC 4180 asks for them. */
  public static String plainOrQuoted(String cell) {
    return plainOrQuoted(cell, ',');
  }

  /** The same for another character between the cells. */
  public static String plainOrQuoted(String cell, char delimiter) {
    boolean breaks = cell.contains("\n") || cell.contains("\r");
    return breaks || cell.indexOf(delimiter) >= 0 || cell.contains("\"") ? quoted(cell) : cell;
  }

  /**
   * A cell of people's text for a file that is opened as a sheet: what a sheet would take for a
   * formula gets an apostrophe before it, so that it stays text. Numbers stay numbers.
   */
  public static String harmless(String cell) {
    boolean formula = !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0;
    return plainOrQuoted(formula && !NUMBER.matcher(cell).matches() ? "'" + cell : cell);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }
}
