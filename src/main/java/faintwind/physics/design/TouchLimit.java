package faintwind.physics.design;

import java.util.List;

/**
 * How hot bare metal may be when it is touched for a time: the burn thresholds of ISO 13732-1:2006
 * (Table 1 for a minute and longer, figures for less), lower edges. The numbers are from memory;
 * only the 65 °C for half a second was seen (a page that cites clause 4.2.1.2). A threshold, not a
 * limit by law; for adults, and not for more than a tenth of the skin.
 */
public final class TouchLimit {
  private static final double REACHED_S = 60;

  private static final List<Threshold> THRESHOLDS =
      List.of(
          new Threshold(1, 65),
          new Threshold(4, 58),
          new Threshold(10, 55),
          new Threshold(60, 51),
          new Threshold(600, 48),
          new Threshold(28_800, 43));

  private TouchLimit() {}

  /**
   * A burn threshold of bare metal.
   *
   * @param contact_s time of contact, s
   * @param temperature_C surface temperature, °C
   */
  public record Threshold(double contact_s, double temperature_C) {}

  /** All thresholds, in rising order of time. */
  public static List<Threshold> thresholds() {
    return THRESHOLDS;
  }

  /**
   * The threshold for a use, °C. Where a child or an animal may reach it, a minute is counted at
   * least: neither lets go at once, and the thresholds are those of adults (own choice).
   */
  public static double temperature_C(Use use) {
    return temperature_C(counted_s(use));
  }

  /** The time of contact that counts for a use, s. */
  public static double counted_s(Use use) {
    return use.isInReach() ? Math.max(REACHED_S, use.contact_s()) : use.contact_s();
  }

  /**
   * The threshold for a time of contact, °C: that of the next longer time in the table, which is
   * the lower one; 43 °C beyond 8 hours.
   */
  public static double temperature_C(double contact_s) {
    for (Threshold t : THRESHOLDS) {
      if (contact_s <= t.contact_s()) {
        return t.temperature_C();
      }
    }
    return THRESHOLDS.get(THRESHOLDS.size() - 1).temperature_C();
  }
}
