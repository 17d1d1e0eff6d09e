package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Ball;
import faintwind.physics.HeatBalance;
import faintwind.physics.Interval;
import faintwind.physics.LeadWire;
import faintwind.physics.Ranged;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.DesignCourse;
import faintwind.physics.design.Spread;
import faintwind.physics.design.SunLoad;
import faintwind.physics.part.Wire;
import java.util.ArrayList;
import java.util.List;

/** Temperatures, times, leads and sun. */
public final class HeatSheet {
  public static final double MOST_LEAD_SHARE = 0.20;

  private HeatSheet() {}

  static List<Outcome> of(Design design, Spread spread, DesignCourse course) {
    List<Ranged.RangeLeft> left = spread.nominal().ranged_K(0).left();
    List<Outcome> all = new ArrayList<>();
    all.addAll(deltas(design, spread));
    times(spread, course).forEach(q -> all.add(Judged.within(q, left)));
    leads(design, spread).forEach(q -> all.add(Judged.within(q, left)));
    all.add(biot(design, spread.nominal()));
    all.addAll(sun(design, spread));
    return all;
  }

  private static List<Outcome> deltas(Design design, Spread spread) {
    List<Outcome> all = new ArrayList<>();
    Interval still = spread.of(m -> m.delta_K(0));
    all.add(delta(OutcomeId.STILL_DELTA, 0, spread));
    all.add(delta(OutcomeId.DELTA_AT_1, 1, spread));
    all.add(delta(OutcomeId.DELTA_AT_3, 3, spread));
    List<Ranged.RangeLeft> left = spread.nominal().ranged_K(0).left();
    TouchSheet.of(design, still, spread.nominal()).forEach(q -> all.add(Judged.within(q, left)));
    return all;
  }

  private static List<Outcome> times(Spread spread, DesignCourse course) {
    List<Outcome> all = new ArrayList<>();
    Interval rate =
        spread.of(m -> m.firstPower_W() / m.balance().pair().heated().heatCapacity_J_K());
    all.add(Outcome.plain(OutcomeId.WARM_UP_RATE, rate));
    Interval tau = spread.of(m -> m.timeConstant_s(0));
    all.add(Outcome.plain(OutcomeId.TIME_CONSTANT_STILL, tau));
    all.add(Outcome.plain(OutcomeId.TIME_CONSTANT_AT_1, spread.of(m -> m.timeConstant_s(1))));
    all.add(Outcome.plain(OutcomeId.TIME_CONSTANT_AT_3, spread.of(m -> m.timeConstant_s(3))));
    all.add(Outcome.plain(OutcomeId.WARM_UP_TIME, tau.times(5.0 / 60)));
    // the course is followed at the nominal; its band is that of the time constant
    Interval minutes = tau.times(1 / (60 * tau.nominal()));
    all.add(Outcome.plain(OutcomeId.WARM_UP_FOLLOWED, minutes.times(course.warmUp_s())));
    all.add(Outcome.plain(OutcomeId.COOL_DOWN_FOLLOWED, minutes.times(course.coolDown_s())));
    all.add(Outcome.plain(OutcomeId.UNEQUAL_DRIFT, spread.of(DesignCourse::drift_K)));
    return all;
  }

  private static Outcome delta(OutcomeId id, double speed_m_s, Spread spread) {
    Interval delta = spread.of(m -> m.delta_K(speed_m_s));
    return Judged.ranged(id, delta, spread.nominal().ranged_K(speed_m_s).left());
  }

  private static List<Outcome> leads(Design design, Spread spread) {
    Interval loss = spread.of(m -> m.leads_W_K(0));
    Interval share = spread.of(m -> 100 * m.leads_W_K(0) * m.delta_K(0) / m.power_W());
    Outcome judged;
    if (share.nominal() <= 100 * MOST_LEAD_SHARE) {
      judged = Outcome.good(OutcomeId.LEAD_LOSS_SHARE, share);
    } else {
      judged =
          Judged.improve(
              OutcomeId.LEAD_LOSS_SHARE,
              share,
              "design.lead-loss",
              Numerals.digits(share.nominal()),
              design.heater().leads().label().name(),
              "AWG " + thinEnough_awg(design, spread.nominal()));
    }
    return List.of(Outcome.plain(OutcomeId.LEAD_LOSS, loss.times(1e3)), judged);
  }

  /**
   * The thickest copper wire for the heater whose two leads take less than a tenth of the power.
   */
  private static int thinEnough_awg(Design design, DesignAtCorner model) {
    HeatBalance balance = model.balance();
    double delta = model.delta_K(0);
    for (int awg = 24; awg < 40; awg += 2) {
      double d = Wire.gauge_m(awg);
      var lead = new LeadWire(d, d + 3e-5, design.heater().leadLength_m(), 395);
      double two = 2 * lead.conductance_W_K(balance.film(), balance.air_K(), 0, delta, 1);
      if (two * delta <= 0.10 * model.power_W()) {
        return awg;
      }
    }
    return 40;
  }

  private static Outcome biot(Design design, DesignAtCorner model) {
    Ball ball = model.balance().pair().heated();
    double h = model.balance().convection_W_K(ball, model.delta_K(3), 3) / ball.area_m2();
    Interval value = Interval.exact(ball.biot(h, design.ball().metal().conductivity_W_mK().low()));
    if (value.nominal() < 0.1) {
      return Outcome.good(OutcomeId.BIOT, value);
    }
    return Judged.improve(OutcomeId.BIOT, value, "design.biot", Numerals.digits(value.nominal()));
  }

  private static List<Outcome> sun(Design design, Spread spread) {
    BallDesign b = design.ball();
    Interval absorbed =
        SunLoad.absorbed_W(
            b.coat().solarAbsorptance(), SunLoad.FULL_SUN_W_M2, b.diameter_m().nominal());
    DesignAtCorner model = spread.nominal();
    Interval share = absorbed.times(100 / model.power_W());
    Interval error =
        absorbed.rising(w -> model.balance().excess_K(model.balance().pair().reference(), w, 1));
    List<Outcome> all = new ArrayList<>();
    all.add(Outcome.plain(OutcomeId.SUN_ABSORBED, absorbed.times(1e3)));
    all.add(Outcome.plain(OutcomeId.SUN_ONE_SHADED, error));
    if (!design.use().isSunny()) {
      all.add(Outcome.plain(OutcomeId.SUN_SHARE, share));
    } else if (share.high() <= 100 * OwnChoices.MOST_SUN_SHARE) {
      all.add(Outcome.good(OutcomeId.SUN_SHARE, share));
    } else {
      all.add(
          Judged.improve(
              OutcomeId.SUN_SHARE,
              share,
              "design.sun",
              Numerals.digits(share.nominal()),
              Numerals.digits(error.nominal()),
              b.coat().label().name()));
    }
    return all;
  }
}
