package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.Use;
import faintwind.physics.part.Metal;
import faintwind.physics.plating.Deposit;
import faintwind.physics.plating.Hydrogen;
import faintwind.physics.plating.PlatingPlan;
import java.util.ArrayList;
import java.util.List;

/** Plating of one ball; absent where the balls are not plated. */
final class PlatingSheet {
  private PlatingSheet() {}

  static List<Outcome> of(Design design) {
    return design.ball().plating().map(plan -> of(design, plan)).orElse(List.of());
  }

  private static List<Outcome> of(Design design, PlatingPlan plan) {
    double d = design.ball().diameter_m().nominal();
    double area = Math.PI * d * d;
    List<Outcome> all = new ArrayList<>();
    double charge = 0;
    if (plan.nickel().thickness_m() > 0) {
      double current = plan.nickel().current_A_m2() * area;
      double q = Deposit.NICKEL.charge_C(plan.nickel().thickness_m(), 1, area);
      all.add(Outcome.plain(OutcomeId.PLATING_NICKEL_CURRENT, current * 1e3));
      all.add(nickelTime(design, plan, q / current / 60));
      charge += q;
    }
    if (plan.gold().thickness_m() > 0) {
      double current = plan.gold().current_A_m2() * area;
      double q = Deposit.GOLD.charge_C(plan.gold().thickness_m(), 1, area);
      all.add(Outcome.plain(OutcomeId.PLATING_GOLD_CURRENT, current * 1e3));
      all.add(Outcome.plain(OutcomeId.PLATING_GOLD_TIME, q / current));
      charge += q;
    }
    all.add(Outcome.plain(OutcomeId.PLATING_CHARGE, charge));
    all.addAll(hydrogen(design, plan, charge));
    return all;
  }

  private static Outcome nickelTime(Design design, PlatingPlan plan, double minutes) {
    Interval time = Interval.exact(minutes);
    if (design.ball().metal().firstBath() == Metal.FirstBath.ZINCATE) {
      return Judged.improve(
          OutcomeId.PLATING_NICKEL_TIME,
          time,
          "design.zincate",
          design.ball().metal().label().name());
    }
    if (!outdoors(design.use()) && plan.by() == PlatingPlan.By.HOME) {
      return Judged.improve(
          OutcomeId.PLATING_NICKEL_TIME,
          time,
          "design.plating-not-needed",
          design.ball().coat().label().name());
    }
    return Outcome.plain(OutcomeId.PLATING_NICKEL_TIME, time);
  }

  private static boolean outdoors(Use use) {
    return use.isSunny() || use.place() == Use.Place.SHADE || use.place() == Use.Place.NARROW;
  }

  /** Worst case: all the charge of both balls gives hydrogen. */
  private static List<Outcome> hydrogen(Design design, PlatingPlan plan, double charge) {
    double volume =
        Hydrogen.volume_m3(2 * charge, 0, design.air().temperature_K(), design.air().pressure_Pa());
    double ofLimit_pct = 100 * volume / plan.room_m3() / Hydrogen.FLAMMABLE_SHARE;
    Interval share = Interval.exact(ofLimit_pct);
    Outcome judged =
        ofLimit_pct <= 100 * Hydrogen.ALARM_OF_LIMIT
            ? Outcome.good(OutcomeId.PLATING_HYDROGEN_ROOM, share)
            : Judged.stop(
                OutcomeId.PLATING_HYDROGEN_ROOM,
                share,
                "design.hydrogen",
                Numerals.digits(ofLimit_pct),
                Numerals.digits(plan.room_m3()));
    return List.of(Outcome.plain(OutcomeId.PLATING_HYDROGEN, volume * 1e6), judged);
  }
}
