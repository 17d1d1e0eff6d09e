package faintwind.calibration.profile;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as a logger writes it: digits, one decimal mark, sign, exponent. Nothing else is one.
 */
final class LineNumber {
  private static final Pattern POINT =
      Pattern.compile("[-+]?(\\d{1,30}\\.?\\d{0,30}|\\.\\d{1,30})([eE][-+]?\\d{1,3})?");
  private static final Pattern COMMA =
      Pattern.compile("[-+]?(\\d{1,30},?\\d{0,30}|,\\d{1,30})([eE][-+]?\\d{1,3})?");

  private LineNumber() {}

  static OptionalDouble parse(String text, char decimalMark) {
    boolean comma = decimalMark == ',';
    if (!(comma ? COMMA : POINT).matcher(text).matches()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(comma ? text.replace(',', '.') : text);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /** The other decimal mark. */
  static char other(char decimalMark) {
    return decimalMark == ',' ? '.' : ',';
  }
}
