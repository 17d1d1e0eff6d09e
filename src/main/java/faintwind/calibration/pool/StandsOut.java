package faintwind.calibration.pool;

import java.util.Locale;

/**
 * That an instrument lies farther from the others than chance explains.
 *
 * @param what the name of the {@link Shared} or {@link Own} in which it does so most
 * @param deviations how far, in standard deviations of a normal number
 */
public record StandsOut(String what, double deviations) {
  /** Chi-squared as so many deviations of a normal number (Wilson and Hilferty 1931). */
  static double deviations(double chiSquared, int freedom) {
    double variance = 2.0 / (9 * freedom);
    return (Math.cbrt(Math.max(0, chiSquared) / freedom) - (1 - variance)) / Math.sqrt(variance);
  }

  /** Its word in files and bundle keys. */
  public String word() {
    return what.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Bundle key of its name. */
  public String key() {
    return "field.pool." + word();
  }
}
