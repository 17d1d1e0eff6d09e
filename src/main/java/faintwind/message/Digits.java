package faintwind.message;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The figures of a typed number, without unit: decimal comma or point, groups, fractions, 4k7. */
final class Digits {
  /** A number with the text that follows it. */
  record Parsed(double value, String rest, boolean fraction) {}

  private static final Pattern MIXED =
      Pattern.compile("^([-+]?)(?:(\\d+) +)?(\\d+) ?/ ?(\\d+)(.*)$");
  private static final Pattern INFIX =
      Pattern.compile("^([-+]?)(\\d+)(R|k|K|M|G|m|µ|V|Ω)(\\d+)(?: *(Ω|(?i:ohms?)|V))?$");
  private static final Pattern PLAIN =
      Pattern.compile(
          "^([-+]?)(\\d{1,3}(?:[ ']\\d{3})+(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)*[.,]?|[.,]\\d+)"
              + "((?:[eE][-+]?\\d+)?)(?![\\d.,])(.*)$");
  private static final Pattern UNSURE = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private Digits() {}

  /** Whether it could be 1.2 or 1200: one comma with three figures after it. */
  static boolean isUnsure(String text) {
    Matcher plain = PLAIN.matcher(text);
    return plain.matches() && plain.group(3).isEmpty() && UNSURE.matcher(plain.group(2)).matches();
  }

  /** The two readings of an unsure number: with a decimal mark, and with a group of three. */
  static String[] bothReadings(String text) {
    Matcher plain = PLAIN.matcher(text);
    if (!plain.matches()) {
      throw new IllegalArgumentException("not a number: " + text);
    }
    String[] halves = plain.group(2).split(",", -1);
    String sign = plain.group(1);
    String decimals = halves[1].replaceFirst("0+$", "");
    return new String[] {
      sign + halves[0] + (decimals.isEmpty() ? "" : "." + decimals),
      sign + halves[0] + "\u202f" + halves[1]
    };
  }

  /** Empty where it is not a number. */
  static Optional<Parsed> read(String text) {
    Matcher mixed = MIXED.matcher(text);
    if (mixed.matches()) {
      double below = Double.parseDouble(mixed.group(4));
      if (below == 0) {
        return Optional.empty();
      }
      double whole = mixed.group(2) == null ? 0 : Double.parseDouble(mixed.group(2));
      double value = whole + Double.parseDouble(mixed.group(3)) / below;
      return Optional.of(new Parsed(signed(mixed.group(1), value), mixed.group(5).trim(), true));
    }
    Matcher infix = INFIX.matcher(text);
    if (infix.matches()) {
      return Optional.of(infix(infix));
    }
    Matcher plain = PLAIN.matcher(text);
    if (!plain.matches()) {
      return Optional.empty();
    }
    OptionalDouble value = decimal(plain.group(2), plain.group(3));
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Parsed(signed(plain.group(1), value.getAsDouble()), plain.group(4).trim(), false));
  }

  /** 4k7 = 4.7 k, 0R5 = 0.5 Ω, 3V3 = 3.3 V (IEC 60062 letter code, common practice). */
  private static Parsed infix(Matcher m) {
    double value = Double.parseDouble(m.group(2) + "." + m.group(4));
    String letter = m.group(3).equals("K") ? "k" : m.group(3);
    String unit = m.group(5) == null ? "" : m.group(5);
    String rest =
        letter.equals("R") || letter.equals("Ω") ? "Ω" : letter.equals("V") ? "V" : letter + unit;
    return new Parsed(signed(m.group(1), value), rest, false);
  }

  private static double signed(String sign, double value) {
    return sign.equals("-") ? -value : value;
  }

  private static OptionalDouble decimal(String digits, String exponent) {
    String text = digits.replaceAll("[ ']", "");
    int comma = text.lastIndexOf(',');
    int point = text.lastIndexOf('.');
    char mark = comma > point ? ',' : '.';
    char group = mark == ',' ? '.' : ',';
    boolean marksTwice = text.indexOf(mark) != text.lastIndexOf(mark);
    if (marksTwice) {
      // 1,200,000: the mark that comes more than once cannot be the decimal mark
      group = mark;
      mark = 0;
    }
    int end = mark == 0 ? text.length() : Math.max(comma, point);
    String whole = end < 0 ? text : text.substring(0, end);
    if (whole.indexOf(group) >= 0 && !isGrouped(whole, group)) {
      return OptionalDouble.empty();
    }
    String decimals = end < 0 || end >= text.length() ? "" : text.substring(end + 1);
    if (decimals.indexOf(',') >= 0 || decimals.indexOf('.') >= 0) {
      return OptionalDouble.empty();
    }
    String clean = whole.replace(String.valueOf(group), "");
    double value =
        Double.parseDouble((clean.isEmpty() ? "0" : clean) + "." + decimals + "0" + exponent);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private static boolean isGrouped(String whole, char mark) {
    String[] groups = whole.split(Pattern.quote(String.valueOf(mark)), -1);
    for (int i = 1; i < groups.length; i++) {
      if (groups[i].length() != 3) {
        return false;
      }
    }
    return !groups[0].isEmpty() && groups[0].length() <= 3;
  }
}
