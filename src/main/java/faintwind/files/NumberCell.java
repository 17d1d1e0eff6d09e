package faintwind.files;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import faintwind.message.Numerals;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads a number as it stands in a cell: digits with a decimal point, an optional sign and an
 * optional exponent, blanks around it allowed. Nothing else is a number: no decimal comma, no
 * thousands mark, no unit, no NaN.
 */
public final class NumberCell {
  /** Enough for any clock, and short of the digits that only binary fractions have. */
  private static final int SHOWN_DIGITS = 9;

  private static final int PLAIN_LENGTH = 15;

  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("[-+]?\\d{1,9},\\d+([eE][-+]?\\d+)?");

  private NumberCell() {}

  /** The number, or empty where the bytes are not one. */
  public static OptionalDouble parse(byte[] text, int from, int to) {
    int start = from;
    int end = to;
    while (start < end && isBlank(text[start])) {
      start++;
    }
    while (start < end && isBlank(text[end - 1])) {
      end--;
    }
    double plain = plain(text, start, end);
    if (!Double.isNaN(plain)) {
      return OptionalDouble.of(plain);
    }
    if (start == end || !looksLikeNumber(text, start, end)) {
      return OptionalDouble.empty();
    }
    try {
      double value = JavaDoubleParser.parseDouble(text, start, end - start);
      return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  public static OptionalDouble parse(String cell) {
    byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
    return parse(bytes, 0, bytes.length);
  }

  /** A number as short as it goes, for a message. */
  public static String shown(double value) {
    return Numerals.digits(value, SHOWN_DIGITS);
  }

  /** Message id that says why a cell that {@link #parse} gave nothing for is not a number. */
  public static String complaint(String cell) {
    String text = cell.strip();
    String lower = text.toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return "cell.empty";
    }
    if (DECIMAL_COMMA.matcher(text).matches()) {
      return "cell.decimal-comma";
    }
    boolean endless = lower.matches("[-+]?(nan|inf|infinity)");
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    boolean tooGreat = looksLikeNumber(bytes, 0, bytes.length) && lower.matches(".*\\d.*e\\d+");
    return endless || tooGreat ? "cell.not-finite" : "cell.not-a-number";
  }

  /**
   * A number of few digits and no exponent, as nearly every cell has; NaN for another. Digits and
   * power of ten are whole numbers that a double holds, so that their quotient is the nearest one
   * (Clinger 1990).
   */
  static double plain(byte[] text, int from, int to) {
    int first = from < to && (text[from] == '-' || text[from] == '+') ? from + 1 : from;
    if (first == to || to - first > PLAIN_LENGTH) {
      return Double.NaN;
    }
    long digits = 0;
    double scale = 0;
    for (int i = first; i < to; i++) {
      int digit = text[i] - '0';
      if (digit >= 0 && digit <= 9) {
        digits = 10 * digits + digit;
        scale *= 10;
      } else if (text[i] == '.' && scale == 0 && to - first > 1) {
        scale = 1;
      } else {
        return Double.NaN;
      }
    }
    double value = scale == 0 ? digits : digits / scale;
    return text[from] == '-' ? -value : value;
  }

  // keeps out what Java would accept beside decimal numbers: hexadecimal, suffixes d and f, NaN
  private static boolean looksLikeNumber(byte[] text, int from, int to) {
    for (int i = from; i < to; i++) {
      byte c = text[i];
      boolean digit = c >= '0' && c <= '9';
      boolean ok = digit || c == '.' || c == '-' || c == '+' || (c | 0x20) == 'e';
      if (!ok) {
        return false;
      }
    }
    return true;
  }

  private static boolean isBlank(byte c) {
    return c == ' ' || c == '\t';
  }
}
