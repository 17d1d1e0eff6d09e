package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.SupplyDesign;
import java.util.Locale;

/** Whether pack and regulator go together, and what a lithium pack asks for. */
final class SourceSheet {
  /** Heat that a linear regulator without a heat sink bears, W (common practice, no source). */
  private static final double BARE_REGULATOR_W = 1;

  /** Below this current many power banks switch off, mA (common practice, no source). */
  private static final double BANK_AWAKE_MA = 100;

  private SourceSheet() {}

  /** The voltage, judged by the heat of the regulator that makes it. */
  static Outcome voltage(SupplyDesign supply, Interval current_A) {
    Interval v = supply.voltage_V();
    boolean linear = supply.regulator().kind() == SupplyDesign.Kind.LINEAR;
    double fresh_V = supply.battery().map(b -> b.fresh_V()).orElse(v.nominal());
    double burnt_W = (fresh_V - v.nominal()) * current_A.high();
    if (!linear || burnt_W <= BARE_REGULATOR_W) {
      return Outcome.plain(OutcomeId.SUPPLY_VOLTAGE, v);
    }
    return Judged.stop(
        OutcomeId.SUPPLY_VOLTAGE,
        v,
        "design.regulator-hot",
        Numerals.digits(burnt_W),
        Numerals.digits(fresh_V),
        Numerals.digits(BARE_REGULATOR_W));
  }

  /** The current drawn from the pack, judged by what kind of pack it is. */
  static Outcome current(SupplyDesign supply, Interval drawn_mA) {
    String name = supply.battery().orElseThrow().label().name();
    String plain = name.toLowerCase(Locale.ROOT);
    OutcomeId id = OutcomeId.BATTERY_CURRENT;
    if (plain.contains("power bank") && drawn_mA.low() < BANK_AWAKE_MA) {
      String drawn = Numerals.digits(drawn_mA.low());
      return Judged.improve(id, drawn_mA, "design.bank-sleeps", drawn, name);
    }
    if (!plain.contains("lithium")) {
      return Outcome.plain(id, drawn_mA);
    }
    boolean guarded = plain.contains("protected") && !plain.contains("unprotected");
    return guarded
        ? Judged.improve(id, drawn_mA, "design.lithium", name)
        : Judged.stop(id, drawn_mA, "design.lithium-unprotected", name);
  }
}
