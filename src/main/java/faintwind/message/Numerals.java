package faintwind.message;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Plain numbers as text, the same in every language: a point before the decimals, no groups. What a
 * person reads in their own language, with its unit, is {@link AmountText}'s.
 */
public final class Numerals {
  private static final double SMALL = 1e-4;
  private static final double LARGE = 1e7;

  private Numerals() {}

  /** Rounded to that many significant digits, without zeros that say nothing. */
  public static String digits(double value, int digits) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : String.valueOf(value);
    }
    return rounded(value, digits).stripTrailingZeros().toPlainString();
  }

  /** Rounded to three significant digits, as a detail of a problem shows them. */
  public static String digits(double value) {
    return digits(value, 3);
  }

  /** The same; very small and very large numbers with a power of ten. */
  public static String compact(double value, int digits) {
    boolean far = Math.abs(value) < SMALL || Math.abs(value) >= LARGE;
    return value != 0 && far && Double.isFinite(value)
        ? String.format(Locale.ROOT, "%." + (digits - 1) + "e", value)
        : digits(value, digits);
  }

  /** A value to the decimal at which its uncertainty, of that many digits, ends: 69 beside 12. */
  public static String beside(double uncertainty, int digits, double value) {
    if (!(uncertainty > 0) || !Double.isFinite(uncertainty) || !Double.isFinite(value)) {
      return digits(value);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(scale(uncertainty, digits), RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  private static int scale(double uncertainty, int digits) {
    BigDecimal ends = rounded(uncertainty, digits);
    return digits - (ends.precision() - ends.scale());
  }

  /** With all its significant digits, zeros included, such as 5.00. */
  public static String exactDigits(double value, int digits) {
    return rounded(value, digits).toPlainString();
  }

  /** A language with the digits 0 to 9, whatever its people write otherwise. */
  public static Locale plainDigits(Locale language) {
    return NumberMarks.withPlainDigits(language);
  }

  /** A whole number with narrow spaces between the thousands. */
  public static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number).replace(',', AmountText.NARROW_SPACE);
  }

  /** With that many decimals. */
  public static String places(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }

  /** With that many decimals, and its sign before it even where it is positive. */
  public static String signed(double value, int places) {
    return String.format(Locale.ROOT, "%+." + places + "f", value);
  }

  /** A time as hours, minutes and seconds, such as 1:02:30. */
  public static String clock(double time_s) {
    long whole = Math.round(time_s);
    return String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
  }

  /** With at most that many decimals, without zeros that say nothing. */
  public static String shortest(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static BigDecimal rounded(double value, int digits) {
    return BigDecimal.valueOf(value).round(new MathContext(digits));
  }
}
