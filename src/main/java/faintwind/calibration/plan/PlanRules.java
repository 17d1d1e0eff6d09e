package faintwind.calibration.plan;

import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Why a plan cannot be, with what would fit; and what a person should know of one that can. */
final class PlanRules {
  private PlanRules() {}

  static List<Problem> refusals(PlanRequest request, Candidates candidates, PlannedFit fit) {
    List<Problem> problems = new ArrayList<>();
    DataWay way = request.arm().way();
    boolean cable = way.kind() == DataWay.Kind.CABLE;
    if (cable && request.wish().directions() == PlanWish.Directions.ONE_WAY) {
      problems.add(Problem.error("plan.cable-one-way", Where.NOWHERE, ""));
    }
    double constants = OwnChoices.LEAST_CONSTANTS;
    List<Candidate> found = candidates.at(constants);
    if (found.size() < OwnChoices.FEWEST_SPEEDS) {
      problems.add(cable ? shortCable(request, fit) : noBeat(request, found));
    }
    return problems;
  }

  private static Problem shortCable(PlanRequest request, PlannedFit fit) {
    double budget = request.arm().way().turnBudget().orElse(0);
    double largest = request.arm().radii_m().get(request.arm().radii_m().size() - 1).value();
    double speed = request.wish().most_m_s();
    double turns = speed / (2 * Math.PI * largest) * fit.timeConstant_s(speed);
    return Problem.error(
        "plan.cable-short",
        Where.NOWHERE,
        Numerals.places(budget, 0),
        Numerals.places(Math.ceil(turns), 0),
        Numerals.places(speed, 2),
        Numerals.places(1000 * largest, 0));
  }

  private static Problem noBeat(PlanRequest request, List<Candidate> found) {
    PlanWish.Beats beats = request.wish().beats();
    double smallest = request.arm().radii_m().get(0).value();
    double largest = request.arm().radii_m().get(request.arm().radii_m().size() - 1).value();
    int few = beats.aTurn().get(0);
    int many = beats.aTurn().get(beats.aTurn().size() - 1);
    double low = new Beat(beats.least(), many).speed_m_s(smallest);
    double beaten = new Beat(beats.most(), few).speed_m_s(largest);
    double high = Math.min(beaten, Candidates.fastest_m_s(largest));
    String id = high < beaten && request.wish().most_m_s() > high ? "plan.no-hold" : "plan.no-beat";
    return Problem.error(
        low < high ? id : "plan.all-held",
        Where.NOWHERE,
        String.valueOf(found.size()),
        Numerals.places(low, 2),
        Numerals.places(high, 2),
        Numerals.places(OwnChoices.MOST_INWARD_M_S2, 0));
  }

  /** Names what keeps the plan from a wanted end of the range, and what would reach it. */
  private static Problem cut(
      String id, Optional<Candidates.Limit> limit, double reached_m_s, PlanWish wish) {
    String why = limit.map(l -> l.name().toLowerCase(Locale.ROOT)).orElse("time");
    double wanted = wish.most_m_s();
    double radius = wanted * wanted / OwnChoices.MOST_INWARD_M_S2;
    return Problem.warning(
        id + why,
        Where.NOWHERE,
        Numerals.places(reached_m_s, 2),
        Numerals.places(OwnChoices.MOST_INWARD_M_S2, 0),
        Numerals.places(Math.ceil(100 * radius) * 10, 0),
        Numerals.places(wanted, 2));
  }

  static Problem noTime(PlanRequest request, double shortest_s) {
    if (request.wish().time().lesson().isPresent()) {
      return Problem.error(
          "plan.lessons-short", Where.NOWHERE, Numerals.places(Math.ceil(shortest_s / 60), 0));
    }
    boolean battery =
        request.arm().way().battery_s().orElse(Double.POSITIVE_INFINITY)
            < request.wish().time().available_s().orElse(Double.POSITIVE_INFINITY);
    return Problem.error(
        battery ? "plan.battery-short" : "plan.time-short",
        Where.NOWHERE,
        Numerals.places(Math.ceil(shortest_s / 60), 0));
  }

  static List<Problem> notes(PlanRequest request, Candidates candidates, PlanChoice choice) {
    List<Problem> notes = new ArrayList<>();
    Plan plan = choice.staircase();
    List<Double> speeds = plan.spins().stream().map(PlannedSpin::speed_m_s).sorted().toList();
    PlanWish wish = request.wish();
    double slowest = speeds.get(0);
    double fastest = speeds.get(speeds.size() - 1);
    if (slowest > 1.3 * wish.least_m_s()) {
      notes.add(cut("plan.slow-cut.", candidates.limit(wish.least_m_s()), slowest, wish));
    }
    if (fastest < wish.most_m_s() / 1.3) {
      notes.add(cut("plan.fast-cut.", candidates.limit(wish.most_m_s()), fastest, wish));
    }
    if (request.arm().way().kind() == DataWay.Kind.FILMED_METER) {
      double readings = plan.total_s() / request.response().step_s();
      if (readings > OwnChoices.MANY_READINGS) {
        notes.add(
            Problem.warning("plan.many-readings", Where.NOWHERE, Numerals.places(readings, 0)));
      }
    }
    if (choice.separate().isEmpty()) {
      notes.add(Problem.warning("plan.no-separate", Where.NOWHERE, ""));
    }
    return notes;
  }
}
