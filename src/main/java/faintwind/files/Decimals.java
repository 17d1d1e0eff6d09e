package faintwind.files;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * The decimal mark of one file whose cells do not end with commas: the first number that has one
 * shows it, and from then on the other mark makes no number. Mutable; for one file.
 */
public final class Decimals {
  private static final Pattern COMMA = Pattern.compile("[-+]?(\\d+,\\d*|,\\d+)([eE][-+]?\\d+)?");
  private static final Pattern POINT =
      Pattern.compile("[-+]?(\\d+\\.\\d*|\\.\\d+)([eE][-+]?\\d+)?");
  private static final char UNKNOWN = 0;

  private char mark = UNKNOWN;

  /** The number in a cell; empty where it is none, or has the other mark. */
  public OptionalDouble number(String cell) {
    String text = cell.strip();
    char own = markOf(text);
    if (own == UNKNOWN) {
      return NumberCell.parse(text);
    }
    mark = mark == UNKNOWN ? own : mark;
    return own == mark ? NumberCell.parse(text.replace(',', '.')) : OptionalDouble.empty();
  }

  /** Message id that says why {@link #number} gave nothing for a cell. */
  public String complaint(String cell) {
    char own = markOf(cell.strip());
    if (own == UNKNOWN) {
      return NumberCell.complaint(cell);
    }
    return own == ',' ? "cell.mixed-comma" : "cell.mixed-point";
  }

  /** A cell with a decimal point, where it is a number. */
  public String plain(String cell) {
    return number(cell).isPresent() ? cell.strip().replace(',', '.') : cell;
  }

  private static char markOf(String text) {
    if (COMMA.matcher(text).matches()) {
      return ',';
    }
    return POINT.matcher(text).matches() ? '.' : UNKNOWN;
  }
}
