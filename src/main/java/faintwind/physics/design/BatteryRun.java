package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.BatteryType;

/**
 * How long a battery feeds the heater. Linear regulator: the battery gives the load's current and
 * the regulator's own; switching: the load's power over efficiency and the battery's mean voltage.
 * Where the regulator needs more than the voltage at which the capacity was stated, only the share
 * (fresh − needed)/(fresh − end) of it can be used (straight discharge line, common practice, no
 * source).
 */
public final class BatteryRun {
  private BatteryRun() {}

  /**
   * Current drawn from the battery, A.
   *
   * @param supply supply with a battery
   * @param load_A current of the heater, A
   */
  public static double current_A(SupplyDesign supply, double load_A) {
    SupplyDesign.Regulator r = supply.regulator();
    return switch (r.kind()) {
      case LINEAR -> load_A + r.own_A();
      case SWITCHING -> {
        BatteryType b = supply.battery().orElseThrow();
        double mean_V = 0.5 * (b.fresh_V() + Math.max(b.end_V(), supply.needed_V()));
        yield load_A * supply.voltage_V().nominal() / (r.efficiency() * mean_V) + r.own_A();
      }
      case MAINS -> load_A;
    };
  }

  /** Share of the stated capacity that can be used before the regulator drops out, 0 to 1. */
  public static double usableShare(SupplyDesign supply) {
    BatteryType b = supply.battery().orElseThrow();
    double share = (b.fresh_V() - supply.needed_V()) / (b.fresh_V() - b.end_V());
    return Math.max(0, Math.min(1, share));
  }

  /** Time, s. */
  public static Interval time_s(SupplyDesign supply, Interval load_A) {
    BatteryType b = supply.battery().orElseThrow();
    Interval current = load_A.rising(i -> current_A(supply, i));
    return b.charge_C(current.nominal()).times(usableShare(supply)).over(current);
  }
}
