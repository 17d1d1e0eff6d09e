package faintwind.calibration.speed;

import java.util.AbstractSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Why a row's speed must be used with care, or not at all. {@link SpeedTeller} sets the first two,
 * {@link RowJudge} the next three, {@link SpeedRow#BAD} has the last.
 */
public enum SpeedFlag {
  /** Below the smallest speed that can be told from still air; a speed is still given. */
  FLOOR(1),
  /** Beyond the calibrated speeds. */
  ABOVE(2),
  /**
   * The difference is still below a tenth of its still-air value, or the estimator has not settled.
   */
  WARMUP(4),
  /** A break in the record just before. */
  GAP(8),
  /** Supply out of tolerance, or the heat balance says that the heater is off. */
  POWER(16),
  /** The row could not be read; it has no speed. */
  BAD(32);

  private static final List<SpeedFlag> ALL = List.of(values());

  private static final List<Set<SpeedFlag>> SETS =
      IntStream.range(0, 1 << ALL.size()).mapToObj(SpeedFlag::ofNumber).toList();

  private static final List<String> TEXTS =
      SETS.stream()
          .map(set -> set.stream().map(SpeedFlag::word).collect(Collectors.joining("+")))
          .toList();

  private final int bit;

  SpeedFlag(int bit) {
    this.bit = bit;
  }

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

  /** The flags whose bits a number has. */
  static Set<SpeedFlag> of(int bits) {
    return SETS.get(bits);
  }

  /** Its bit in a number that stands for several. */
  int bit() {
    return bit;
  }

  private static int number(Set<SpeedFlag> flags) {
    if (flags instanceof Kept kept) {
      return kept.number;
    }
    int number = 0;
    for (SpeedFlag flag : flags) {
      number |= flag.bit;
    }
    return number;
  }

  private static Set<SpeedFlag> ofNumber(int number) {
    return new Kept(number, ALL.stream().filter(flag -> (number & flag.bit) != 0).toList());
  }

  /** Flags that know the number that stands for them. */
  private static final class Kept extends AbstractSet<SpeedFlag> {
    private final int number;
    private final List<SpeedFlag> flags;

    Kept(int number, List<SpeedFlag> flags) {
      this.number = number;
      this.flags = flags;
    }

    @Override
    public boolean contains(Object flag) {
      return flag instanceof SpeedFlag asked && (number & asked.bit) != 0;
    }

    @Override
    public Iterator<SpeedFlag> iterator() {
      return flags.iterator();
    }

    @Override
    public int size() {
      return flags.size();
    }
  }
}
