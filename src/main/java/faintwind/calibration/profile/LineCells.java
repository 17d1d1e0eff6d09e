package faintwind.calibration.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Cuts a line into its cells. */
final class LineCells {
  private LineCells() {}

  /**
   * The cells without the blanks around them. A cell in quotation marks may hold the delimiter; a
   * mark that has no partner stands for itself.
   */
  static List<String> split(String line, char delimiter) {
    if (delimiter == ' ') {
      String text = line.strip();
      return text.isEmpty() ? List.of() : List.of(text.split("\\s+", -1));
    }
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    int i = 0;
    while (i <= line.length()) {
      if (i == line.length() || line.charAt(i) == delimiter) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else if (line.charAt(i) == '"'
          && cell.toString().isBlank()
          && partner(line, i).isPresent()) {
        int end = partner(line, i).getAsInt();
        cell.append(line.substring(i + 1, end).replace("\"\"", "\""));
        i = end;
      } else {
        cell.append(line.charAt(i));
      }
      i++;
    }
    return cells;
  }

  private static OptionalInt partner(String line, int open) {
    int at = open + 1;
    while (at < line.length()) {
      boolean mark = line.charAt(at) == '"';
      boolean doubled = mark && at + 1 < line.length() && line.charAt(at + 1) == '"';
      if (mark && !doubled) {
        return OptionalInt.of(at);
      }
      at += doubled ? 2 : 1;
    }
    return OptionalInt.empty();
  }
}
