package faintwind.physics.part;

import faintwind.physics.Interval;
import java.util.Comparator;
import java.util.List;

/**
 * A kind of battery.
 *
 * @param label id, name, source
 * @param fresh_V voltage when fresh, V
 * @param end_V voltage at which its stated capacity is used up, V
 * @param capacities capacity by load, in rising order of load
 * @param cells what it is made of and what guards it
 */
public record BatteryType(
    Label label, double fresh_V, double end_V, List<Capacity> capacities, Cells cells) {

  public BatteryType {
    capacities = capacities.stream().sorted(Comparator.comparingDouble(Capacity::load_A)).toList();
    if (capacities.isEmpty()) {
      throw new IllegalArgumentException("battery " + label.id() + " has no capacity");
    }
  }

  /**
   * Capacity at one load.
   *
   * @param load_A current drawn, A
   * @param charge_C capacity, C
   */
  public record Capacity(double load_A, Interval charge_C) {}

  /** Capacity at a load, C: straight line between stated loads, held beyond them. */
  public Interval charge_C(double load_A) {
    Capacity below = capacities.get(0);
    for (Capacity c : capacities) {
      if (c.load_A() >= load_A) {
        return between(below, c, load_A);
      }
      below = c;
    }
    return below.charge_C();
  }

  private static Interval between(Capacity a, Capacity b, double load_A) {
    if (b.load_A() <= a.load_A() || load_A <= a.load_A()) {
      return a.charge_C();
    }
    double share = (load_A - a.load_A()) / (b.load_A() - a.load_A());
    return a.charge_C().times(1 - share).plus(b.charge_C().times(share));
  }
}
