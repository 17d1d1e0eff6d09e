package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BatteryRun;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.Spread;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.ResistorStyle;
import java.util.ArrayList;
import java.util.List;

/** Resistor, supply, cable and battery. */
final class HeaterSheet {
  private static final List<Double> R10 =
      List.of(1.0, 1.25, 1.6, 2.0, 2.5, 3.15, 4.0, 5.0, 6.3, 8.0);
  private static final double REFERENCE_K = Constants.ZERO_C_K + 20;

  private HeaterSheet() {}

  static List<Outcome> of(Design design, Spread spread) {
    List<Outcome> all = new ArrayList<>();
    all.add(resistance(design));
    all.addAll(leadToLead(design));
    Interval power = spread.of(DesignAtCorner::power_W);
    all.add(Outcome.plain(OutcomeId.HEATER_POWER, power));
    Interval body_K = spread.of(DesignAtCorner::body_K);
    all.add(MaterialSheet.resistor(design, body_K.minus(Interval.exact(Constants.ZERO_C_K))));
    Interval hot = resistance_ohm(design, body_K.high());
    all.add(Outcome.plain(OutcomeId.HEATER_HOT, hot));
    Interval current = current_A(design, hot);
    all.add(Outcome.plain(OutcomeId.HEATER_CURRENT, current.times(1e3)));
    Interval drop = current.times(cable_ohm(design));
    all.add(Outcome.plain(OutcomeId.HEATER_VOLTAGE, heaterVoltage_V(design, hot)));
    all.add(Outcome.plain(OutcomeId.HEATER_RATING, design.heater().style().rating_W()));
    all.add(rating(design, body_K.high(), power));
    ResistorStyle.Body body = design.heater().style().body();
    double side = Math.PI * body.diameter_m().nominal() * body.length_m();
    all.add(Outcome.plain(OutcomeId.HEATER_FLUX, power.times(1e-4 / side)));
    all.add(
        Outcome.plain(
            OutcomeId.BALL_FLUX,
            power.times(1 / (Math.PI * Math.pow(design.ball().diameter_m().nominal(), 2)))));
    all.addAll(supply(design, current));
    design
        .supply()
        .cable()
        .ifPresentOrElse(
            c -> all.addAll(cable(c, drop)),
            // no cable in the design: a metre or two of thin copper and the meter's own leads
            // (common practice, no source), so that a cable can still be judged
            () -> all.add(Outcome.plain(OutcomeId.CABLE_END_TO_END, OwnChoices.NO_CABLE_OHM)));
    if (design.supply().battery().isPresent()) {
      all.addAll(battery(design.supply(), current));
    }
    return all;
  }

  private static Interval cable_ohm(Design design) {
    return design.supply().cable().map(SupplyDesign.Cable::loop_ohm).orElse(Interval.exact(0));
  }

  /** Resistance with its tolerance and that of its temperature coefficient, at a temperature. */
  private static Interval resistance_ohm(Design design, double body_K) {
    Interval change = design.heater().style().tempco_1_K().times(body_K - REFERENCE_K);
    return design.heater().resistance_ohm().times(change.plus(Interval.exact(1)));
  }

  private static Interval current_A(Design design, Interval resistance_ohm) {
    return design.supply().voltage_V().over(resistance_ohm.plus(cable_ohm(design)));
  }

  private static Interval heaterVoltage_V(Design design, Interval hot_ohm) {
    Interval share =
        Interval.exact(1).over(cable_ohm(design).over(hot_ohm).plus(Interval.exact(1)));
    return design.supply().voltage_V().times(share);
  }

  private static Outcome resistance(Design design) {
    Interval r = design.heater().resistance_ohm();
    ESeries series = design.heater().series();
    if (series.has(r.nominal())) {
      return Outcome.good(OutcomeId.HEATER_RESISTANCE, r);
    }
    return Judged.improve(
        OutcomeId.HEATER_RESISTANCE,
        r,
        "design.not-in-series",
        Numerals.digits(r.nominal()),
        series.name(),
        Numerals.digits(series.nearest_ohm(r.nominal())));
  }

  private static List<Outcome> leadToLead(Design design) {
    double leads = 2 * design.heater().leadLength_m();
    // measured before the heater was on: the resistor is as warm as the room
    Interval r =
        resistance_ohm(design, design.air().temperature_K())
            .plus(design.heater().leads().resistance_ohm_m().times(leads));
    return List.of(
        Outcome.plain(OutcomeId.LEAD_LENGTH, 1e3 * design.heater().leadLength_m()),
        Outcome.plain(OutcomeId.LEAD_TO_LEAD_LOW, r.low()),
        Outcome.plain(OutcomeId.LEAD_TO_LEAD_HIGH, r.high()));
  }

  /**
   * The rating at the temperature of the body: the ball's and the rise across the epoxy around it.
   */
  private static Outcome rating(Design design, double body_K, Interval power) {
    ResistorStyle style = design.heater().style();
    double altitude_m = design.use().altitude_m();
    Interval allowed = Interval.exact(style.allowed_W(body_K, altitude_m));
    if (power.high() <= allowed.nominal()) {
      return Outcome.good(OutcomeId.HEATER_RATING_DERATED, allowed);
    }
    return Judged.stop(
        OutcomeId.HEATER_RATING_DERATED,
        allowed,
        "design.rating-exceeded",
        Numerals.digits(power.high()),
        Numerals.digits(allowed.nominal()),
        Numerals.digits(body_K - Constants.ZERO_C_K),
        Numerals.digits(2 * style.rating_W()),
        Numerals.digits(gentler_ohm(design, allowed.nominal())));
  }

  private static double gentler_ohm(Design design, double allowed_W) {
    double v = design.supply().voltage_V().high();
    double low_ohm = v * v / Math.max(OwnChoices.LEAST_W, 0.9 * allowed_W);
    double tolerance =
        design.heater().resistance_ohm().half() / design.heater().resistance_ohm().nominal();
    return design.heater().series().atLeast_ohm(low_ohm / (1 - tolerance));
  }

  /** The current may be read at switching on or hours later: the band spans cold and hot. */
  private static List<Outcome> supply(Design design, Interval hot_A) {
    Interval v = design.supply().voltage_V();
    Interval cold_A = current_A(design, resistance_ohm(design, design.air().temperature_K()));
    return List.of(
        SourceSheet.voltage(design.supply(), hot_A),
        Outcome.plain(OutcomeId.SUPPLY_LOW, v.low()),
        Outcome.plain(OutcomeId.SUPPLY_HIGH, v.high()),
        Outcome.plain(OutcomeId.CURRENT_LOW, 1e3 * Math.min(cold_A.low(), hot_A.low())),
        Outcome.plain(OutcomeId.CURRENT_HIGH, 1e3 * Math.max(cold_A.high(), hot_A.high())),
        Outcome.plain(OutcomeId.FUSE, fuse_mA(1e3 * Math.max(cold_A.high(), hot_A.high()))));
  }

  /**
   * The next fuse of the R10 series (ratings of IEC 60127, from memory) above one and a half times
   * the highest current, so that it does not tire (common practice, no source).
   */
  private static double fuse_mA(double current_mA) {
    double least = OwnChoices.FUSE_SHARE * current_mA;
    double decade = Math.pow(10, Math.floor(Math.log10(least)));
    return R10.stream()
        .map(step -> step * decade)
        .filter(rating -> rating >= least * (1 - 1e-9))
        .findFirst()
        .orElse(10 * decade);
  }

  private static List<Outcome> cable(SupplyDesign.Cable cable, Interval drop) {
    Interval loop = cable.loop_ohm();
    return List.of(
        Outcome.plain(OutcomeId.CABLE_RESISTANCE, loop),
        Outcome.plain(OutcomeId.CABLE_DROP, drop),
        // one conductor and the meter's own leads, 0.5 Ω (common practice, no source)
        Outcome.plain(OutcomeId.CABLE_END_TO_END, loop.high() / 2 + 0.5));
  }

  private static List<Outcome> battery(SupplyDesign supply, Interval current) {
    Interval drawn = current.rising(i -> BatteryRun.current_A(supply, i)).times(1e3);
    Interval hours = BatteryRun.time_s(supply, current).times(1 / 3600.0);
    BatteryType b = supply.battery().orElseThrow();
    String needed = Numerals.digits(supply.needed_V());
    String fresh = Numerals.digits(b.fresh_V());
    Outcome time;
    if (supply.needed_V() >= b.fresh_V()) {
      time = Judged.stop(OutcomeId.BATTERY_TIME, hours, "design.below-dropout", fresh, needed);
    } else if (BatteryRun.usableShare(supply) < 0.7) {
      String share = Numerals.digits(100 * BatteryRun.usableShare(supply));
      time =
          Judged.improve(
              OutcomeId.BATTERY_TIME, hours, "design.dropout-early", fresh, needed, share);
    } else {
      time = Outcome.good(OutcomeId.BATTERY_TIME, hours);
    }
    return List.of(SourceSheet.cells(b), SourceSheet.current(b, drawn), time);
  }
}
