package faintwind.calibration.speed;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

  private static final List<Set<SpeedFlag>> SETS =
      IntStream.range(0, 1 << values().length).mapToObj(SpeedFlag::ofNumber).toList();

  private static final List<String> TEXTS =
      SETS.stream()
          .map(set -> set.stream().map(SpeedFlag::word).collect(Collectors.joining("+")))
          .toList();

  /** The word in a converted log. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The words of several flags joined by +, in the order of this list; empty for none. */
  public static String text(Set<SpeedFlag> flags) {
    return TEXTS.get(number(flags));
  }

  /** The same flags as a set that cannot change; there is one of each kind. */
  static Set<SpeedFlag> kept(Set<SpeedFlag> flags) {
    return SETS.get(number(flags));
  }

  private static int number(Set<SpeedFlag> flags) {
    int number = 0;
    for (SpeedFlag flag : flags) {
      number |= 1 << flag.ordinal();
    }
    return number;
  }

  private static Set<SpeedFlag> ofNumber(int number) {
    EnumSet<SpeedFlag> set = EnumSet.noneOf(SpeedFlag.class);
    for (SpeedFlag flag : values()) {
      if ((number & (1 << flag.ordinal())) != 0) {
        set.add(flag);
      }
    }
    return Collections.unmodifiableSet(set);
  }
}
