package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Cells;
import faintwind.physics.part.Cells.Chemistry;
import java.util.OptionalDouble;

/** Whether pack and regulator go together, and what the cells of the pack ask for. */
final class SourceSheet {
  private SourceSheet() {}

  /** The voltage, judged by the heat of the regulator that makes it. */
  static Outcome voltage(SupplyDesign supply, Interval current_A) {
    Interval v = supply.voltage_V();
    boolean linear = supply.regulator().kind() == SupplyDesign.Kind.LINEAR;
    double fresh_V = supply.battery().map(b -> b.fresh_V()).orElse(v.nominal());
    double burnt_W = (fresh_V - v.nominal()) * current_A.high();
    if (!linear || burnt_W <= OwnChoices.BARE_REGULATOR_W) {
      return Outcome.plain(OutcomeId.SUPPLY_VOLTAGE, v);
    }
    return Judged.stop(
        OutcomeId.SUPPLY_VOLTAGE,
        v,
        "design.regulator-hot",
        Numerals.digits(burnt_W),
        Numerals.digits(fresh_V),
        Numerals.digits(OwnChoices.BARE_REGULATOR_W));
  }

  /** The voltage of the fresh pack, judged by what its cells are and what guards them. */
  static Outcome cells(BatteryType pack) {
    OutcomeId id = OutcomeId.BATTERY_FRESH;
    Interval fresh_V = Interval.exact(pack.fresh_V());
    String name = pack.label().name();
    Chemistry chemistry = pack.cells().chemistry();
    if (chemistry == Chemistry.NOT_RECORDED) {
      return Judged.stop(id, fresh_V, "design.cells-unknown", name, pack.label().id());
    }
    if (chemistry.isLithium() && !pack.cells().isProtected()) {
      return Judged.stop(id, fresh_V, "design.lithium-unprotected", name);
    }
    if (chemistry == Chemistry.LITHIUM_PRIMARY) {
      return Judged.improve(id, fresh_V, "design.lithium-primary", name);
    }
    if (chemistry.isLithium()) {
      return Judged.improve(id, fresh_V, "design.lithium", name);
    }
    return chemistry == Chemistry.LEAD_ACID
        ? Judged.improve(id, fresh_V, "design.lead-acid", name)
        : Outcome.plain(id, fresh_V);
  }

  /** The current drawn from the pack, judged by what the pack may give and when it sleeps. */
  static Outcome current(BatteryType pack, Interval drawn_mA) {
    OutcomeId id = OutcomeId.BATTERY_CURRENT;
    Cells cells = pack.cells();
    String name = pack.label().name();
    double most_mA = mA(cells.most_A(), Double.POSITIVE_INFINITY);
    if (drawn_mA.high() > most_mA) {
      String drawn = Numerals.digits(drawn_mA.high());
      return Judged.stop(
          id, drawn_mA, "design.pack-overloaded", drawn, name, Numerals.digits(most_mA));
    }
    double awake_mA = mA(cells.sleepsBelow_A(), 0);
    if (drawn_mA.low() < awake_mA) {
      String drawn = Numerals.digits(drawn_mA.low());
      return Judged.improve(
          id, drawn_mA, "design.bank-sleeps", drawn, name, Numerals.digits(awake_mA));
    }
    return Outcome.plain(id, drawn_mA);
  }

  private static double mA(OptionalDouble stated_A, double otherwise) {
    return stated_A.isPresent() ? 1e3 * stated_A.getAsDouble() : otherwise;
  }
}
