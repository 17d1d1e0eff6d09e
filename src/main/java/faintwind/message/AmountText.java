package faintwind.message;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Quantities as people read them: decimal mark of the locale, a narrow space between groups of
 * three, the unit after a space.
 */
public final class AmountText {
  static final char NARROW_SPACE = '\u202f';

  /** Up to the largest ball a length is one for a caliper, which shows hundredths. */
  private static final double CALIPER_MM = 40;

  /** Below this share of the unit asked for, 27 Ω is no number of megohms to anybody. */
  private static final double FAR_BELOW = 1e-3;

  private AmountText() {}

  /** A number rounded to that many significant digits, without zeros that say nothing. */
  public static String number(double value, int digits, Locale locale) {
    return format(value, digits, 0, locale);
  }

  /** The same with its unit; a percent sign and a degree keep their space, ″ does not occur. */
  public static String quantity(double value, String unit, int digits, Locale locale) {
    int least = unit.equals("mm") && Math.abs(value) < CALIPER_MM ? 2 : 0;
    String number = format(value, digits, least, locale);
    return unit.isEmpty() ? number : number + "\u00a0" + unit;
  }

  /**
   * What was understood, for the line under a field: {@code 420 000 Ω, that is 0.42 MΩ}; {@code
   * over range: open}.
   */
  public static String understood(Amount amount, Messages messages) {
    Locale locale = messages.locale();
    if (amount.bound() == Amount.Bound.OVER_RANGE) {
      return messages.text("number.understood.over-range");
    }
    String asked = quantity(amount.value(), amount.unit(), 7, locale);
    UnitSymbols.Entry unit = NumberText.entry(amount.unit());
    String base = unit.kind().baseSymbol();
    String main = asked;
    if (unit.kind().takesBarePrefix() && !base.equals(amount.unit()) && !amount.unit().isEmpty()) {
      double value = NumberText.convert(amount.value(), amount.unit(), base);
      String inBase = quantity(value, base, 7, locale);
      boolean same = Math.abs(amount.value()) < FAR_BELOW && Math.abs(value) >= 1;
      main = same ? inBase : messages.text("number.understood.that-is", inBase, asked);
    }
    String bounded =
        switch (amount.bound()) {
          case EXACT, OVER_RANGE -> main;
          case AT_LEAST -> messages.text("number.understood.at-least", main);
          case AT_MOST -> messages.text("number.understood.at-most", main);
        };
    if (amount.tolerance().isEmpty()) {
      return bounded;
    }
    String half = quantity(amount.tolerance().getAsDouble(), amount.unit(), 4, locale);
    return messages.text("number.understood.tolerance", bounded, half);
  }

  private static String format(double value, int digits, int leastDecimals, Locale locale) {
    if (!Double.isFinite(value)) {
      return value > 0 ? "∞" : "−∞";
    }
    DecimalFormatSymbols symbols =
        DecimalFormatSymbols.getInstance(NumberMarks.withPlainDigits(locale));
    symbols.setGroupingSeparator(NARROW_SPACE);
    symbols.setMinusSign('−');
    DecimalFormat format = new DecimalFormat("#,##0.############", symbols);
    format.setMinimumFractionDigits(leastDecimals);
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits));
    return format.format(rounded);
  }
}
