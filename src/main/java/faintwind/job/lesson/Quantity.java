package faintwind.job.lesson;

import faintwind.guide.lesson.Spread;
import java.util.Locale;

/** What is compared over the instruments of a class. */
public enum Quantity {
  /** Difference in still air by the last jar check. */
  STILL("K"),
  /** Time constant in still air by the calibration in force. */
  CONSTANT("s"),
  /** Time constant at 1 m/s by it. */
  BREEZE("s"),
  /** Resistance of the heater alone. */
  HEATER("Ω"),
  /** Expanded uncertainty of the calibration in force, per cent of the speed. */
  U95("%");

  private static final double LARGER_SHARE = 0.25;

  private final String unit;

  Quantity(String unit) {
    this.unit = unit;
  }

  /**
   * Whether who lies outside has a fault to look for. An uncertainty is worked out and hardly
   * scatters: it counts where it is larger by a quarter (own choice); a smaller one is no fault.
   */
  boolean isFault(double score, Spread spread, int pair) {
    double value = spread.values().getOrDefault(pair, spread.median());
    return this != U95 || (score > 0 && value > (1 + LARGER_SHARE) * spread.median());
  }

  public String unit() {
    return unit;
  }

  /** The word in bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
