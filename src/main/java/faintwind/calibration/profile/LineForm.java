package faintwind.calibration.profile;

import java.util.List;
import java.util.OptionalInt;

/**
 * How a line is cut into cells.
 *
 * @param delimiter between cells; a blank stands for any number of blanks and tabs
 * @param decimalMark of its numbers: point or comma
 * @param headerLines lines before the first reading of a file
 * @param namesLine which of them carries the names, from 1; empty for the last
 * @param comment what a line that is no reading begins with; empty for nothing
 * @param missing words that stand for a value that was not there
 */
public record LineForm(
    char delimiter,
    char decimalMark,
    int headerLines,
    OptionalInt namesLine,
    String comment,
    List<String> missing) {

  /** Comma and point, one row of names, comments with #. */
  public static final LineForm RUN_FILE =
      new LineForm(',', '.', 1, OptionalInt.empty(), "#", List.of());

  public LineForm {
    missing = List.copyOf(missing);
    if (decimalMark != '.' && decimalMark != ',') {
      throw new IllegalArgumentException("decimalMark = " + decimalMark + ", allowed . or ,");
    }
    if (headerLines < 0) {
      throw new IllegalArgumentException("headerLines = " + headerLines + ", allowed from 0");
    }
    if (namesLine.isPresent() && (namesLine.getAsInt() < 1 || namesLine.getAsInt() > headerLines)) {
      throw new IllegalArgumentException(
          "namesLine = " + namesLine + ", allowed from 1 to " + headerLines);
    }
  }

  /** The same as the lines that a sheet becomes: commas, decimal points, no comments. */
  public LineForm ofSheet() {
    return new LineForm(',', '.', headerLines, namesLine, comment, missing);
  }

  /** The line that carries the names. */
  int names() {
    return namesLine.orElse(headerLines);
  }

  /** The cells of a line, without the blanks around them. */
  public static List<String> cells(String line, char delimiter) {
    return LineCells.split(line, delimiter);
  }

  /** A delimiter as a profile writes it. */
  public static String word(char delimiter) {
    return switch (delimiter) {
      case '\t' -> "tab";
      case ' ' -> "space";
      default -> String.valueOf(delimiter);
    };
  }

  boolean isMissing(String cell) {
    return cell.isEmpty() || missing.contains(cell);
  }
}
