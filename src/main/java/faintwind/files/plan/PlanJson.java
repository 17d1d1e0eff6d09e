package faintwind.files.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.Foretold;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.physics.Interval;
import java.util.Locale;

/** Writes a plan and what it started from as JSON. */
final class PlanJson {
  private PlanJson() {}

  static ObjectNode object(PlannedSession planned) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "faintwind-plan/1");
    arm(planned.request(), root.putObject("arm"));
    wish(planned.request().wish(), root.putObject("wish"));
    response(planned.request().response(), root.putObject("response"));
    planned.request().uCarried().ifPresent(u -> root.put("u_swirl_pct", percent(u)));
    root.put("asymmetry_pct", percent(planned.request().asymmetry()));
    ArrayNode plans = root.putArray("plans");
    plan(planned.choice().staircase(), plans.addObject());
    planned.choice().separate().ifPresent(p -> plan(p, plans.addObject()));
    return root;
  }

  private static void arm(PlanRequest request, ObjectNode to) {
    ArrayNode radii = to.putArray("radii");
    for (Uncertain radius : request.arm().radii_m()) {
      radius(radius, radii.addObject());
    }
    to.put("way", request.arm().way().kind().word());
    request.arm().way().turnBudget().ifPresent(t -> to.put("cable_turns", t));
    request.arm().way().battery_s().ifPresent(s -> to.put("battery_s", s));
  }

  private static void radius(Uncertain radius, ObjectNode to) {
    to.put("radius_mm", round(1e3 * radius.value(), 6));
    radius.u().ifPresent(u -> to.put("u_radius_mm", round(1e3 * u, 6)));
  }

  private static void wish(PlanWish wish, ObjectNode to) {
    to.put("from_m_s", wish.least_m_s()).put("to_m_s", wish.most_m_s());
    to.put("least_beats", wish.beats().least()).put("most_beats", wish.beats().most());
    ArrayNode aTurn = to.putArray("beats_a_turn");
    wish.beats().aTurn().forEach(aTurn::add);
    to.put("directions", word(wish.directions()));
    wish.time().available_s().ifPresent(s -> to.put("available_s", s));
    wish.time()
        .lesson()
        .ifPresent(l -> to.put("lesson_s", l.length_s()).put("most_lessons", l.most()));
  }

  private static void response(Response response, ObjectNode to) {
    interval("still_s", response.still_s(), to);
    interval("breeze_s", response.breeze_s(), to);
    to.put("still_K", response.still_K()).put("noise_K", response.noise_K());
    to.put("step_s", response.step_s());
  }

  private static void interval(String key, Interval interval, ObjectNode to) {
    to.putArray(key).add(interval.low()).add(interval.nominal()).add(interval.high());
  }

  private static void plan(Plan plan, ObjectNode to) {
    to.put("form", word(plan.form()));
    to.put("total_s", round(plan.total_s(), 3));
    to.put("lessons", plan.lessons());
    Foretold foretold = plan.foretold();
    to.put("mean_u_pct", percent(foretold.mean()));
    ArrayNode speeds = to.putArray("u_by_speed");
    for (Foretold.AtSpeed at : foretold.speeds()) {
      speeds.addObject().put("speed_m_s", round(at.speed_m_s(), 5)).put("u_pct", percent(at.u()));
    }
    ArrayNode budget = to.putArray("budget");
    for (BudgetShare share : foretold.budget()) {
      budget.addObject().put("source", share.source()).put("u_pct", percent(share.u_m_s()));
    }
    ArrayNode steps = to.putArray("steps");
    plan.steps().forEach(step -> step(step, steps.addObject()));
  }

  private static void step(PlannedStep step, ObjectNode to) {
    to.put("step", word(step.kind()));
    to.put("start_s", round(step.start_s(), 3)).put("duration_s", round(step.duration_s(), 3));
    to.put("lesson", step.lesson()).put("recording", step.recording());
    step.spin().ifPresent(spin -> spin(spin, to));
  }

  private static void spin(PlannedSpin spin, ObjectNode to) {
    to.put("spin", spin.number());
    to.put("speed_m_s", round(spin.speed_m_s(), 6));
    to.put("u_speed_m_s", round(spin.u_speed_m_s(), 7));
    radius(spin.radius_m(), to);
    to.put("beats_a_minute", spin.beat().perMinute()).put("beats_a_turn", spin.beat().aTurn());
    to.put("turns", spin.turns());
    to.put("turns_time_s", round(spin.turnsTime_s(), 3));
    to.put("direction", spin.direction().word());
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static double percent(double share) {
    return round(100 * share, 4);
  }

  private static double round(double value, int places) {
    return java.math.BigDecimal.valueOf(value)
        .setScale(places, java.math.RoundingMode.HALF_EVEN)
        .doubleValue();
  }
}
