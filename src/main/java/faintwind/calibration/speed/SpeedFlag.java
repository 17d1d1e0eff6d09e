package faintwind.calibration.speed;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Why a row's speed must be used with care, or not at all. */
public enum SpeedFlag {
  /** Below the smallest speed that can be told from still air; a speed is still given. */
  FLOOR,
  /** Beyond the calibrated speeds. */
  ABOVE,
  /**
   * The difference is still below a tenth of its still-air value, or the estimator has not settled.
   */
  WARMUP,
  /** A break in the record just before. */
  GAP,
  /** Supply out of tolerance, or the heat balance says that the heater is off. */
  POWER,
  /** The row could not be read; it has no speed. */
  BAD;

  /** The word in a converted log. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The words of several flags joined by +, in the order of this list; empty for none. */
  public static String text(Set<SpeedFlag> flags) {
    return flags.stream().sorted().map(SpeedFlag::word).collect(Collectors.joining("+"));
  }
}
