package faintwind.report.plot;

import faintwind.message.Numerals;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round numbers along an axis and their words. */
public final class PlotTicks {
  private static final String MINUS = "\u2212";
  private static final double[] CLOCK_STEPS_S = {
    60, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400
  };

  private PlotTicks() {}

  /**
   * One tick.
   *
   * @param value its number
   * @param label its words
   */
  public record Tick(double value, String label) {}

  /**
   * Ticks at round numbers.
   *
   * @param most how many there may be, at least 2
   */
  public static List<Tick> of(PlotAxis.Scale scale, PlotRange range, int most, Locale locale) {
    return switch (scale) {
      case LINEAR -> linear(range, most, 1, false, locale);
      case SIGNED -> linear(range, most, 1, true, locale);
      case MINUTES -> linear(range, most, 60, false, locale);
      case LOGARITHMIC -> decades(range, most, locale);
      case CLOCK -> clock(range, most);
    };
  }

  private static List<Tick> linear(
      PlotRange range, int most, double unit, boolean sign, Locale locale) {
    double step = step((range.high() - range.low()) / unit, most);
    List<Tick> ticks = new ArrayList<>();
    int digits = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    // a step of 2.5 needs one digit more than its decade
    double scaled = step * Math.pow(10, digits);
    if (Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
      digits++;
    }
    long first = (long) Math.ceil(range.low() / unit / step - 1e-9);
    long last = (long) Math.floor(range.high() / unit / step + 1e-9);
    for (long k = first; k <= last; k++) {
      double value = k * step;
      ticks.add(new Tick(value * unit, number(value, digits, sign, locale)));
    }
    return ticks;
  }

  /** The smallest of 1, 2, 2.5, 5 times a power of ten that gives at most {@code most} ticks. */
  private static double step(double span, int most) {
    double rough = span / Math.max(1, most - 1);
    double decade = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 2.5, 5}) {
      if (factor * decade >= rough * (1 - 1e-9)) {
        return factor * decade;
      }
    }
    return 10 * decade;
  }

  private static List<Tick> decades(PlotRange range, int most, Locale locale) {
    int first = (int) Math.floor(Math.log10(range.low()));
    int last = (int) Math.ceil(Math.log10(range.high()));
    double[] factors = (last - first) * 3 <= most + 3 ? new double[] {1, 2, 5} : new double[] {1};
    List<Tick> ticks = new ArrayList<>();
    for (int decade = first; decade <= last; decade++) {
      for (double factor : factors) {
        double value = factor * Math.pow(10, decade);
        if (value >= range.low() * (1 - 1e-9) && value <= range.high() * (1 + 1e-9)) {
          ticks.add(new Tick(value, number(value, Math.max(0, -decade), false, locale)));
        }
      }
    }
    return ticks;
  }

  private static List<Tick> clock(PlotRange range, int most) {
    double step = CLOCK_STEPS_S[CLOCK_STEPS_S.length - 1];
    for (double candidate : CLOCK_STEPS_S) {
      if ((range.high() - range.low()) / candidate <= most - 1) {
        step = candidate;
        break;
      }
    }
    List<Tick> ticks = new ArrayList<>();
    for (double t = Math.ceil(range.low() / step) * step; t <= range.high(); t += step) {
      long minutes = Math.round(t / 60);
      ticks.add(
          new Tick(t, String.format(Locale.ROOT, "%02d:%02d", hour(minutes, range), minutes % 60)));
    }
    return ticks;
  }

  /** Midnight at the end of a day reads 24:00, as people say it. */
  private static long hour(long minutes, PlotRange range) {
    long hour = minutes / 60;
    return hour == 24 && minutes * 60 + 1 > range.high() ? 24 : Math.floorMod(hour, 24L);
  }

  public static String number(double value, int digits, boolean sign, Locale locale) {
    NumberFormat format = NumberFormat.getNumberInstance(Numerals.plainDigits(locale));
    format.setGroupingUsed(false);
    format.setMinimumFractionDigits(digits);
    format.setMaximumFractionDigits(digits);
    String size = format.format(Math.abs(value));
    boolean zero = Math.abs(value) < 0.5 * Math.pow(10, -digits);
    String front = zero ? "" : value < 0 ? MINUS : sign ? "+" : "";
    return front + (Math.abs(value) >= 10_000 ? grouped(size) : size);
  }

  private static String grouped(String digits) {
    int end = digits.length();
    for (int i = 0; i < digits.length(); i++) {
      if (!Character.isDigit(digits.charAt(i))) {
        end = i;
        break;
      }
    }
    StringBuilder text = new StringBuilder(digits);
    for (int i = end - 3; i > 0; i -= 3) {
      text.insert(i, '\u2009');
    }
    return text.toString();
  }
}
