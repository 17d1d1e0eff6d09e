package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.AirProperties;
import faintwind.physics.Interval;
import faintwind.physics.MoistAir;
import faintwind.physics.Ranged;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.BoreFit;
import faintwind.physics.design.Design;
import faintwind.physics.design.Drilling;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Air, balls and holes. */
final class BallSheet {
  private BallSheet() {}

  static List<Outcome> of(Design design) {
    List<Outcome> all = new ArrayList<>(air(design));
    BallDesign ball = design.ball();
    BallDesign.Bore bore = ball.bore();
    Interval d = ball.diameter_m();
    all.add(Outcome.plain(OutcomeId.BALL_DIAMETER, d.times(1e3)));
    all.add(Outcome.plain(OutcomeId.BALL_AREA, d.rising(x -> Math.PI * x * x).times(1e6)));
    all.add(Outcome.plain(OutcomeId.BORE, bore.diameter_m() * 1e3));
    all.add(Outcome.plain(OutcomeId.HEATED_BORE_DEPTH, ball.length_m(bore.heatedDepth_m()) * 1e3));
    all.add(
        Outcome.plain(
            OutcomeId.REFERENCE_BORE_DEPTH, ball.length_m(bore.referenceDepth_m()) * 1e3));
    Interval blank = ball.blank_kg().times(1e3);
    all.add(Outcome.plain(OutcomeId.BALL_MASS, blank));
    double agreement_g =
        Math.max(OwnChoices.SCALE_AGREEMENT_g, OwnChoices.BLANK_AGREEMENT * blank.nominal());
    all.add(Outcome.plain(OutcomeId.BLANK_MASS_AGREEMENT, agreement_g));
    all.add(mass(OutcomeId.HEATED_BALL_MASS, ball, bore.heatedDepth_m()));
    all.add(mass(OutcomeId.REFERENCE_BALL_MASS, ball, bore.referenceDepth_m()));
    all.add(Outcome.plain(OutcomeId.BORE_MASS_PER_MM, ball.perMillimetre_kg() * 1e3));
    all.add(capacity(ball));
    Interval turns = ball.metal().drillTurns_1_s(bore.diameter_m());
    all.add(Outcome.plain(OutcomeId.DRILL_SPEED, turns.times(60)));
    all.add(Outcome.plain(OutcomeId.PECK_DEPTH, Drilling.DEEPEST_PECK * bore.diameter_m() * 1e3));
    all.addAll(drilling(ball));
    all.addAll(fit(design));
    return all;
  }

  private static List<Outcome> air(Design design) {
    AirProperties p = AirProperties.of(design.air());
    List<Ranged.RangeLeft> left = AirProperties.left(design.air());
    return List.of(
        Judged.ranged(
            OutcomeId.AIR_DENSITY,
            Interval.exact(p.density_kg_m3()),
            MoistAir.density_kg_m3(design.air()).left()),
        Judged.ranged(
            OutcomeId.AIR_KINEMATIC_VISCOSITY,
            Interval.exact(p.kinematicViscosity_m2_s() * 1e6),
            left),
        Judged.ranged(
            OutcomeId.AIR_CONDUCTIVITY, Interval.exact(p.conductivity_W_mK() * 1e3), left),
        Judged.ranged(OutcomeId.AIR_PRANDTL, Interval.exact(p.prandtl()), left));
  }

  private static Outcome mass(OutcomeId id, BallDesign ball, OptionalDouble depth_m) {
    return Outcome.plain(id, ball.drilled_kg(depth_m).times(1e3));
  }

  private static Outcome capacity(BallDesign ball) {
    OptionalDouble depth = ball.bore().heatedDepth_m();
    Interval c = ball.metal().specificHeat_J_kgK();
    Interval d = ball.diameter_m();
    return Outcome.plain(
        OutcomeId.BALL_HEAT_CAPACITY,
        new Interval(
            ball.heatCapacity_J_K(depth, new BallDesign.Sizes(d.low(), c.low())),
            ball.heatCapacity_J_K(depth, new BallDesign.Sizes(d.nominal(), c.nominal())),
            ball.heatCapacity_J_K(depth, new BallDesign.Sizes(d.high(), c.high()))));
  }

  private static List<Outcome> drilling(BallDesign ball) {
    Drilling heated = Drilling.of(ball, ball.bore().heatedDepth_m());
    Drilling reference = Drilling.of(ball, ball.bore().referenceDepth_m());
    return List.of(
        Outcome.plain(OutcomeId.FLAT_DEPTH, ball.dome_m() * 1e3),
        Outcome.plain(OutcomeId.HEATED_FROM_FLAT, heated.fromFlat_m() * 1e3),
        Outcome.plain(OutcomeId.REFERENCE_FROM_FLAT, reference.fromFlat_m() * 1e3),
        Outcome.plain(OutcomeId.HEATED_TRAVEL, heated.travel_m() * 1e3),
        Outcome.plain(OutcomeId.REFERENCE_TRAVEL, reference.travel_m() * 1e3),
        Outcome.plain(OutcomeId.HEATED_PECKS, heated.pecks()),
        Outcome.plain(OutcomeId.REFERENCE_PECKS, reference.pecks()));
  }

  private static List<Outcome> fit(Design design) {
    Interval needed = BoreFit.needed_m(design.heater(), design.sense().gauge());
    double bore = design.ball().bore().diameter_m();
    Interval clearance = Interval.exact(bore).minus(needed).times(1e3);
    String body = Numerals.digits(design.heater().style().body().diameter_m().high() * 1e3);
    String next = Numerals.digits(Math.ceil(needed.high() * 1e4) / 10);
    String now = Numerals.digits(bore * 1e3);
    Outcome verdict;
    if (needed.nominal() > bore) {
      verdict =
          Judged.stop(
              OutcomeId.BORE_CLEARANCE, clearance, "design.bore-too-narrow", now, next, body);
    } else if (needed.high() > bore) {
      verdict =
          Judged.improve(OutcomeId.BORE_CLEARANCE, clearance, "design.bore-tight", now, next, body);
    } else {
      verdict = lengthwise(design, clearance);
    }
    return List.of(Outcome.plain(OutcomeId.BORE_NEEDED, needed.times(1e3)), verdict);
  }

  private static Outcome lengthwise(Design design, Interval clearance) {
    double length = BoreFit.length_m(design.heater());
    double hole = design.ball().length_m(design.ball().bore().heatedDepth_m());
    if (length > hole) {
      return Judged.improve(
          OutcomeId.BORE_CLEARANCE,
          clearance,
          "design.resistor-sticks-out",
          Numerals.digits(length * 1e3),
          Numerals.digits(hole * 1e3));
    }
    return Outcome.good(OutcomeId.BORE_CLEARANCE, clearance);
  }
}
