package faintwind.job.lesson;

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

  private final String unit;

  Quantity(String unit) {
    this.unit = unit;
  }

  public String unit() {
    return unit;
  }

  /** The word in bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
