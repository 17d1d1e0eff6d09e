package faintwind.files.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanChoice;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanTerms;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.files.JsonFile;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

  /** What the plan starts from; refused in the words of its fields. */
  Checked<PlanTerms> terms() {
    Map<String, String> texts = new HashMap<>();
    for (PlanField each : PlanField.values()) {
      texts.put(each.field().id(), text(each, node, each.path()));
    }
    return PlanTerms.of(texts, field -> where.atColumn(field.path()));
  }

  /** The text of a field, with commas between the items of a list. */
  private static String text(PlanField field, JsonNode from, String path) {
    int dot = path.indexOf('.');
    JsonNode inside = from.path(dot < 0 ? path : path.substring(0, dot));
    if (inside.isArray()) {
      List<String> items = new ArrayList<>();
      inside.forEach(
          item ->
              items.add(dot < 0 ? plain(field, item) : text(field, item, path.substring(dot + 1))));
      return String.join(",", items);
    }
    return dot < 0 ? plain(field, inside) : text(field, inside, path.substring(dot + 1));
  }

  private static String plain(PlanField field, JsonNode value) {
    return value.isNumber() && field.perUnit() != 1
        ? Field.plain(value.asDouble() / field.perUnit())
        : JsonFile.text(value);
  }

  Checked<PlannedSession> planned(PlanTerms terms) {
    try {
      PlanRequest request = terms.with(response(node.get("response")));
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

  private static Uncertain radius(JsonNode radius) {
    OptionalDouble u_mm = optional(radius, "u_radius_mm");
    return new Uncertain(
        number(radius, "radius_mm") / 1e3,
        u_mm.isPresent() ? OptionalDouble.of(u_mm.getAsDouble() / 1e3) : OptionalDouble.empty());
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
    List<Promise.AtSpeed> speeds = new ArrayList<>();
    for (JsonNode at : plan.get("u_by_speed")) {
      speeds.add(new Promise.AtSpeed(number(at, "speed_m_s"), number(at, "u_pct") / 100));
    }
    List<BudgetShare> budget = new ArrayList<>();
    for (JsonNode share : plan.get("budget")) {
      budget.add(new BudgetShare(share.get("source").asText(), number(share, "u_pct") / 100));
    }
    return new Plan(
        Plan.Form.valueOf(upper(plan, "form")),
        steps,
        new Promise(number(plan, "mean_u_pct") / 100, speeds, budget));
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

  private static String upper(JsonNode node, String key) {
    return node.get(key).asText().toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
