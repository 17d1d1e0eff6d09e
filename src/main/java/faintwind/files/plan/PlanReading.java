package faintwind.files.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Foretold;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanChoice;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a plan that its schema has passed. What contradicts itself is refused. */
final class PlanReading {
  private final ObjectNode node;
  private final Where where;

  PlanReading(ObjectNode node, Where where) {
    this.node = node;
    this.where = where;
  }

  Checked<PlannedSession> planned() {
    try {
      PlanRequest request =
          new PlanRequest(
              arm(node.get("arm")),
              wish(node.get("wish")),
              response(node.get("response")),
              share(node, "u_swirl_pct"),
              number(node, "asymmetry_pct") / 100);
      Optional<Plan> staircase = Optional.empty();
      Optional<Plan> separate = Optional.empty();
      for (JsonNode each : node.get("plans")) {
        Plan plan = plan(each);
        if (plan.form() == Plan.Form.STAIRCASE) {
          staircase = Optional.of(plan);
        } else {
          separate = Optional.of(plan);
        }
      }
      if (staircase.isEmpty()) {
        return Checked.refused(Problem.error("plan.no-staircase", where.atColumn("plans"), ""));
      }
      return Checked.ok(new PlannedSession(request, new PlanChoice(staircase.get(), separate)));
    } catch (IllegalArgumentException contradiction) {
      String why = String.valueOf(contradiction.getMessage());
      return Checked.refused(Problem.error("plan.contradiction", where, why));
    }
  }

  private static ArmSetup arm(JsonNode arm) {
    List<Uncertain> radii = new ArrayList<>();
    arm.get("radii").forEach(radius -> radii.add(radius(radius)));
    DataWay way =
        new DataWay(
            DataWay.Kind.valueOf(upper(arm, "way")),
            optional(arm, "cable_turns"),
            optional(arm, "battery_s"));
    return new ArmSetup(radii, way);
  }

  private static Uncertain radius(JsonNode radius) {
    OptionalDouble u_mm = optional(radius, "u_radius_mm");
    return new Uncertain(
        number(radius, "radius_mm") / 1e3,
        u_mm.isPresent() ? OptionalDouble.of(u_mm.getAsDouble() / 1e3) : OptionalDouble.empty());
  }

  private static PlanWish wish(JsonNode wish) {
    List<Integer> aTurn = new ArrayList<>();
    wish.get("beats_a_turn").forEach(n -> aTurn.add(n.asInt()));
    OptionalDouble lesson_s = optional(wish, "lesson_s");
    return new PlanWish(
        number(wish, "from_m_s"),
        number(wish, "to_m_s"),
        new PlanWish.Beats(wish.get("least_beats").asInt(), wish.get("most_beats").asInt(), aTurn),
        PlanWish.Directions.valueOf(upper(wish, "directions")),
        new PlanWish.Time(
            optional(wish, "available_s"),
            lesson_s.isPresent()
                ? Optional.of(
                    new PlanWish.Lesson(lesson_s.getAsDouble(), wish.path("most_lessons").asInt(1)))
                : Optional.empty()));
  }

  private static Response response(JsonNode response) {
    return new Response(
        interval(response.get("still_s")),
        interval(response.get("breeze_s")),
        number(response, "still_K"),
        number(response, "noise_K"),
        number(response, "step_s"));
  }

  private static Interval interval(JsonNode three) {
    return new Interval(three.get(0).asDouble(), three.get(1).asDouble(), three.get(2).asDouble());
  }

  private static Plan plan(JsonNode plan) {
    List<PlannedStep> steps = new ArrayList<>();
    plan.get("steps").forEach(step -> steps.add(step(step)));
    List<Foretold.AtSpeed> speeds = new ArrayList<>();
    for (JsonNode at : plan.get("u_by_speed")) {
      speeds.add(new Foretold.AtSpeed(number(at, "speed_m_s"), number(at, "u_pct") / 100));
    }
    List<BudgetShare> budget = new ArrayList<>();
    for (JsonNode share : plan.get("budget")) {
      budget.add(new BudgetShare(share.get("source").asText(), number(share, "u_pct") / 100));
    }
    return new Plan(
        Plan.Form.valueOf(upper(plan, "form")),
        steps,
        new Foretold(number(plan, "mean_u_pct") / 100, speeds, budget));
  }

  private static PlannedStep step(JsonNode step) {
    PlannedStep.Kind kind = PlannedStep.Kind.valueOf(upper(step, "step"));
    return new PlannedStep(
        kind,
        number(step, "start_s"),
        number(step, "duration_s"),
        step.get("lesson").asInt(),
        step.get("recording").asInt(),
        kind == PlannedStep.Kind.SPIN ? Optional.of(spin(step)) : Optional.empty());
  }

  private static PlannedSpin spin(JsonNode step) {
    return new PlannedSpin(
        step.get("spin").asInt(),
        radius(step),
        new Beat(step.get("beats_a_minute").asInt(), step.get("beats_a_turn").asInt()),
        step.get("turns").asInt(),
        Direction.valueOf(upper(step, "direction")),
        number(step, "u_speed_m_s"));
  }

  private static double number(JsonNode node, String key) {
    return node.get(key).asDouble();
  }

  private static OptionalDouble optional(JsonNode node, String key) {
    return node.hasNonNull(key) ? OptionalDouble.of(number(node, key)) : OptionalDouble.empty();
  }

  private static OptionalDouble share(JsonNode node, String key) {
    OptionalDouble percent = optional(node, key);
    return percent.isPresent()
        ? OptionalDouble.of(percent.getAsDouble() / 100)
        : OptionalDouble.empty();
  }

  private static String upper(JsonNode node, String key) {
    return node.get(key).asText().toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
