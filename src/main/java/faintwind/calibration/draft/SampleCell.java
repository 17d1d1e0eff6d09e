package faintwind.calibration.draft;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a cell of a log looks like. */
final class SampleCell {
  static final Pattern COMMA = Pattern.compile("[-+]?\\d*,\\d+([eE][-+]?\\d+)?");
  static final Pattern POINT = Pattern.compile("[-+]?\\d*\\.\\d+([eE][-+]?\\d+)?");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+[.,]?\\d*|[.,]\\d+)([eE][-+]?\\d+)?");

  /** A number with a unit behind it. */
  private static final Pattern MEASURED =
      Pattern.compile("([-+]?(?:\\d+[.,]?\\d*|[.,]\\d+))\\s*([^\\d\\s.,:/-]\\S{0,5})");

  private SampleCell() {}

  static boolean isNumber(String cell) {
    return NUMBER.matcher(cell).matches();
  }

  /** Whether it is a number, a number with a unit, a date or a time. */
  static boolean isValue(String cell) {
    return isNumber(cell) || SampleTime.isTime(cell) || !after(cell).isEmpty();
  }

  /** The unit behind a number; empty for none that is known. */
  static String after(String cell) {
    Matcher match = MEASURED.matcher(cell);
    return match.matches() && SampleUnit.isUnit(match.group(2)) ? match.group(2) : "";
  }
}
