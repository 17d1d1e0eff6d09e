package faintwind.files.run;

import faintwind.files.Decimals;
import faintwind.files.HeadName;
import faintwind.files.NumberCell;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The numbers of one small table: with decimal points where commas part its cells, else with the
 * mark of its first decimal number; in the unit of the column's name whatever its head says.
 * Mutable; for one table.
 */
final class TableNumbers {
  /** Times that a person may note by a clock on the wall. */
  static final Set<String> TIMES =
      Set.of("from_s", "to_s", "first_click_s", "spin_start_s", "spin_stop_s");

  private final char delimiter;
  private final Decimals decimals = new Decimals();
  private final Map<String, Double> factors = new HashMap<>();

  TableNumbers(char delimiter, List<HeadName> heads) {
    this.delimiter = delimiter;
    heads.forEach(head -> factors.put(head.name(), head.factor()));
  }

  /** That of comma, semicolon and tab which parts the header into the most names that are known. */
  static char delimiter(String text, Set<String> known) {
    String header =
        text.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).findFirst().orElse("");
    char best = ',';
    long most = 0;
    for (char delimiter : new char[] {',', ';', '\t'}) {
      long found =
          Pattern.compile(Pattern.quote(String.valueOf(delimiter)))
              .splitAsStream(header)
              .map(head -> head.replace('"', ' ').strip())
              .filter(head -> known.contains(head(head, known).name()))
              .count();
      best = found > most ? delimiter : best;
      most = Math.max(most, found);
    }
    return best;
  }

  /** The column of a head; a time may do without its unit, for clock times. */
  static HeadName head(String head, Set<String> known) {
    String time = head.replace(' ', '_') + "_s";
    return TIMES.contains(time) && known.contains(time)
        ? new HeadName(time, 1)
        : HeadName.of(head, known);
  }

  OptionalDouble read(String column, String cell) {
    OptionalDouble value = delimiter == ',' ? NumberCell.parse(cell) : decimals.number(cell);
    return value.isPresent()
        ? OptionalDouble.of(value.getAsDouble() * factors.getOrDefault(column, 1.0))
        : value;
  }

  /** Message id that says why a cell is not a number. */
  String complaint(String cell) {
    return delimiter == ',' ? NumberCell.complaint(cell) : decimals.complaint(cell);
  }
}
