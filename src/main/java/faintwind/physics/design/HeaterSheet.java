package faintwind.physics.design;

import faintwind.physics.Constants;
import java.util.ArrayList;
import java.util.List;

/** Resistor, supply, cable and battery. */
final class HeaterSheet {
  private static final double FILLED_EPOXY_W_MK = 0.7; // lower edge of 0.7–1.5, from memory

  private HeaterSheet() {}

  static List<Quantity> of(Design design, Spread spread) {
    List<Quantity> all = new ArrayList<>();
    all.add(resistance(design));
    all.addAll(leadToLead(design));
    Interval power = spread.of(DesignModel::power_W);
    all.add(Quantity.plain(QuantityId.HEATER_POWER, power));
    Interval total = design.heater().resistance_ohm().plus(cable_ohm(design));
    Interval current = design.supply().voltage_V().over(total);
    all.add(Quantity.plain(QuantityId.HEATER_CURRENT, current.times(1e3)));
    Interval drop = current.times(cable_ohm(design));
    all.add(Quantity.plain(QuantityId.HEATER_VOLTAGE, heaterVoltage_V(design)));
    all.add(plain(QuantityId.HEATER_RATING, design.heater().style().rating_W()));
    all.add(rating(design, spread, power));
    ResistorStyle.Body body = design.heater().style().body();
    double side = Math.PI * body.diameter_m().nominal() * body.length_m();
    all.add(Quantity.plain(QuantityId.HEATER_FLUX, power.times(1e-4 / side)));
    all.add(
        Quantity.plain(
            QuantityId.BALL_FLUX,
            power.times(1 / (Math.PI * Math.pow(design.ball().diameter_m().nominal(), 2)))));
    all.addAll(supply(design, current));
    design.supply().cable().ifPresent(c -> all.addAll(cable(c, drop)));
    if (design.supply().battery().isPresent()) {
      all.addAll(battery(design.supply(), current));
    }
    return all;
  }

  private static Interval cable_ohm(Design design) {
    return design.supply().cable().map(SupplyDesign.Cable::loop_ohm).orElse(Interval.exact(0));
  }

  private static Interval heaterVoltage_V(Design design) {
    Interval share =
        Interval.exact(1)
            .over(cable_ohm(design).over(design.heater().resistance_ohm()).plus(Interval.exact(1)));
    return design.supply().voltage_V().times(share);
  }

  private static Quantity resistance(Design design) {
    Interval r = design.heater().resistance_ohm();
    ESeries series = design.heater().series();
    if (series.has(r.nominal())) {
      return Quantity.good(QuantityId.HEATER_RESISTANCE, r);
    }
    return Judged.improve(
        QuantityId.HEATER_RESISTANCE,
        r,
        "design.not-in-series",
        Figures.of(r.nominal()),
        series.name(),
        Figures.of(series.nearest_ohm(r.nominal())));
  }

  private static List<Quantity> leadToLead(Design design) {
    double leads = 2 * design.heater().leadLength_m();
    Interval r =
        design
            .heater()
            .resistance_ohm()
            .plus(design.heater().leads().resistance_ohm_m().times(leads));
    return List.of(
        plain(QuantityId.LEAD_TO_LEAD_LOW, r.low()), plain(QuantityId.LEAD_TO_LEAD_HIGH, r.high()));
  }

  /**
   * The rating at the temperature of the body: the ball's and the rise across the epoxy around it.
   */
  private static Quantity rating(Design design, Spread spread, Interval power) {
    ResistorStyle style = design.heater().style();
    double ball_K = design.air().temperature_K() + spread.of(m -> m.delta_K(0)).high();
    double body_K = ball_K + power.high() * epoxy_K_W(design);
    double altitude_m = design.use().altitude_m();
    Interval allowed = Interval.exact(style.allowed_W(body_K, altitude_m));
    if (power.high() <= allowed.nominal()) {
      return Quantity.good(QuantityId.HEATER_RATING_DERATED, allowed);
    }
    return Judged.stop(
        QuantityId.HEATER_RATING_DERATED,
        allowed,
        "design.rating-exceeded",
        Figures.of(power.high()),
        Figures.of(allowed.nominal()),
        Figures.of(body_K - Constants.ZERO_C_K),
        Figures.of(2 * style.rating_W()),
        Figures.of(gentler_ohm(design, allowed.nominal())));
  }

  private static double epoxy_K_W(Design design) {
    ResistorStyle.Body body = design.heater().style().body();
    double gap = Math.max(1.02, design.ball().bore().diameter_m() / body.diameter_m().nominal());
    return Math.log(gap) / (2 * Math.PI * FILLED_EPOXY_W_MK * body.length_m());
  }

  private static double gentler_ohm(Design design, double allowed_W) {
    double v = design.supply().voltage_V().high();
    double low_ohm = v * v / Math.max(1e-3, 0.9 * allowed_W);
    double tolerance =
        design.heater().resistance_ohm().half() / design.heater().resistance_ohm().nominal();
    return design.heater().series().atLeast_ohm(low_ohm / (1 - tolerance));
  }

  private static List<Quantity> supply(Design design, Interval current) {
    Interval v = design.supply().voltage_V();
    return List.of(
        Quantity.plain(QuantityId.SUPPLY_VOLTAGE, v),
        plain(QuantityId.SUPPLY_LOW, v.low()),
        plain(QuantityId.SUPPLY_HIGH, v.high()),
        plain(QuantityId.CURRENT_LOW, current.low() * 1e3),
        plain(QuantityId.CURRENT_HIGH, current.high() * 1e3));
  }

  private static List<Quantity> cable(SupplyDesign.Cable cable, Interval drop) {
    Interval loop = cable.loop_ohm();
    return List.of(
        Quantity.plain(QuantityId.CABLE_RESISTANCE, loop),
        Quantity.plain(QuantityId.CABLE_DROP, drop),
        // one conductor and the meter's own leads, 0.5 Ω (common practice, no source)
        plain(QuantityId.CABLE_END_TO_END, loop.high() / 2 + 0.5));
  }

  private static List<Quantity> battery(SupplyDesign supply, Interval current) {
    Interval drawn = current.rising(i -> BatteryRun.current_A(supply, i)).times(1e3);
    Interval hours = BatteryRun.time_s(supply, current).times(1 / 3600.0);
    BatteryType b = supply.battery().orElseThrow();
    String needed = Figures.of(supply.needed_V());
    String fresh = Figures.of(b.fresh_V());
    Quantity time;
    if (supply.needed_V() >= b.fresh_V()) {
      time = Judged.stop(QuantityId.BATTERY_TIME, hours, "design.below-dropout", fresh, needed);
    } else if (BatteryRun.usableShare(supply) < 0.7) {
      String share = Figures.of(100 * BatteryRun.usableShare(supply));
      time =
          Judged.improve(
              QuantityId.BATTERY_TIME, hours, "design.dropout-early", fresh, needed, share);
    } else {
      time = Quantity.good(QuantityId.BATTERY_TIME, hours);
    }
    return List.of(Quantity.plain(QuantityId.BATTERY_CURRENT, drawn), time);
  }

  private static Quantity plain(QuantityId id, double value) {
    return Quantity.plain(id, Interval.exact(value));
  }
}
