package faintwind.files.table;

import faintwind.files.RowText;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The rows of a sheet as lines of comma-separated text. A row keeps its number: rows that were left
 * out become blank lines. Every row gets as many cells as the widest has.
 */
final class WorkbookLines {
  /** A sheet stores binary fractions; beyond these digits there is nothing but their rest. */
  private static final MathContext DIGITS = new MathContext(15);

  private static final DateTimeFormatter DATE_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter FINE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);

  private static final int MOST_ROWS = 1 << 20;

  private final List<List<String>> rows = new ArrayList<>();
  private int widest;

  /** Whether nothing stands in the sheet. */
  boolean isEmpty() {
    return widest == 0;
  }

  /**
   * Adds a row; empty cells at its end are left away.
   *
   * @throws IllegalArgumentException where no sheet has so many rows
   */
  void row(int number, List<String> cells) {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1).isBlank()) {
      end--;
    }
    if (end == 0) {
      return;
    }
    if (number > MOST_ROWS) {
      throw new IllegalArgumentException("number = " + number + ", allowed up to " + MOST_ROWS);
    }
    while (rows.size() < number - 1) {
      rows.add(List.of());
    }
    rows.add(List.copyOf(cells.subList(0, end)));
    if (!cells.get(0).startsWith("#")) {
      widest = Math.max(widest, end);
    }
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      boolean comment = !row.isEmpty() && row.get(0).startsWith("#");
      if (comment) {
        text.append(String.join(" ", row));
      } else if (!row.isEmpty()) {
        row.forEach(cell -> text.append(plain(cell)).append(','));
        text.setLength(text.length() - 1);
        text.append(",".repeat(widest - row.size()));
      }
      text.append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String plain(String cell) {
    return RowText.plainOrQuoted(cell.replaceAll("[\\r\\n]+", " "));
  }

  /** A number as a cell of text. */
  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A date and time of day as a cell of text. */
  static String moment(LocalDateTime at) {
    return at.truncatedTo(ChronoUnit.SECONDS).equals(at) ? DATE_TIME.format(at) : FINE.format(at);
  }

  /** A time of day, or a duration beyond one, as a cell of text. */
  static String clock(long time_ms) {
    String whole =
        String.format(
            Locale.ROOT,
            "%02d:%02d:%02d",
            time_ms / 3_600_000,
            time_ms / 60_000 % 60,
            time_ms / 1000 % 60);
    return time_ms % 1000 == 0
        ? whole
        : whole + String.format(Locale.ROOT, ".%03d", time_ms % 1000);
  }

  /** A cell's name such as B7, both from 1. */
  static String cell(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int left = column; left > 0; left = (left - 1) / 26) {
      letters.insert(0, (char) ('A' + (left - 1) % 26));
    }
    return letters.append(row).toString();
  }
}
