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

  /**
   * A row whose cells are {@link #harmless}; the row itself where they are already, which is looked
   * for quickly. Its quotation marks pair.
   */
  public static String harmlessRow(String row) {
    boolean begins = true;
    boolean suspect = false;
    for (int i = 0; i < row.length() && !suspect; i++) {
      char c = row.charAt(i);
      if (begins && c != '"') {
        boolean sign = c == '+' || c == '-';
        boolean number = sign && i + 1 < row.length() && Character.isDigit(row.charAt(i + 1));
        suspect = number ? !isNumberAt(row, i) : FORMULA.indexOf(c) >= 0;
      }
      begins = c == ',' || (begins && c == '"');
    }
    return suspect ? harmlessCells(row) : row;
  }

  /**
   * Whether {@link #harmlessRow} leaves a row as it is, found quickly; false where that is not
   * known.
   */
  public static boolean isSurelyHarmless(byte[] row) {
    boolean begins = true;
    for (int i = 0; i < row.length; i++) {
      byte c = row[i];
      if (begins && (c < '0' || c > '9') && c != ',' && !isNegative(row, i)) {
        return false;
      }
      begins = c == ',';
    }
    return true;
  }

  private static boolean isNegative(byte[] row, int at) {
    int points = 0;
    int i = at + 1;
    if (row[at] != '-' || i == row.length || row[i] < '0' || row[i] > '9') {
      return false;
    }
    for (; i < row.length && row[i] != ','; i++) {
      points += row[i] == '.' ? 1 : 0;
      if (row[i] != '.' && (row[i] < '0' || row[i] > '9')) {
        return false;
      }
    }
    return points <= 1;
  }

  private static boolean isNumberAt(String row, int from) {
    int end = from;
    while (end < row.length() && row.charAt(end) != ',' && row.charAt(end) != '"') {
      end++;
    }
    return NUMBER.matcher(row.substring(from, end)).matches();
  }

  private static String harmlessCells(String row) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean within = false;
    for (int i = 0; i < row.length(); i++) {
      char c = row.charAt(i);
      if (c == '"' && within && i + 1 < row.length() && row.charAt(i + 1) == '"') {
        cell.append(row.charAt(++i));
      } else if (c == '"') {
        within = !within;
      } else if (c == ',' && !within) {
        cells.add(harmless(cell.toString()));
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(harmless(cell.toString()));
    return String.join(",", cells);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }
}
