package faintwind.files.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Field;
import faintwind.physics.Interval;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes a plan and what it started from as JSON. */
final class PlanJson {
  private PlanJson() {}

  static ObjectNode object(PlannedSession planned) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "faintwind-plan/1");
    for (PlanField each : PlanField.values()) {
      put(each, each.of(planned.request()), root);
    }
    response(planned.request().response(), root.putObject("response"));
    ArrayNode plans = root.putArray("plans");
    plan(planned.choice().staircase(), plans.addObject());
    planned.choice().separate().ifPresent(p -> plan(p, plans.addObject()));
    return root;
  }

  /** Puts what a request says of a field where the file has it. */
  private static void put(PlanField field, String text, ObjectNode root) {
    if (text.isEmpty()) {
      return;
    }
    String[] path = field.path().split("\\.", -1);
    String key = path[path.length - 1];
    ObjectNode group = path.length > 1 ? root.withObjectProperty(path[0]) : root;
    String[] items = text.split(",", -1);
    if (path.length > 2) {
      ArrayNode array = group.withArrayProperty(path[1]);
      for (int i = 0; i < items.length; i++) {
        ObjectNode item = i < array.size() ? (ObjectNode) array.get(i) : array.addObject();
        if (!items[i].isEmpty()) {
          item.set(key, value(field, items[i]));
        }
      }
    } else if (field.isList()) {
      for (String item : items) {
        group.withArrayProperty(key).add(value(field, item));
      }
    } else {
      group.set(key, value(field, text));
    }
  }

  private static JsonNode value(PlanField field, String text) {
    if (field.field().range().isEmpty()) {
      return TextNode.valueOf(text);
    }
    return field.field().range().get().whole()
        ? IntNode.valueOf(Integer.parseInt(text))
        : DoubleNode.valueOf(round(field.perUnit() * Double.parseDouble(text), 6));
  }

  private static void radius(Uncertain radius, ObjectNode to) {
    to.put("radius_mm", round(1e3 * radius.value(), 6));
    radius.u().ifPresent(u -> to.put("u_radius_mm", round(1e3 * u, 6)));
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
    to.put("form", Field.word(plan.form()));
    to.put("total_s", round(plan.total_s(), 3));
    to.put("lessons", plan.lessons());
    Promise foretold = plan.promise();
    to.put("mean_u_pct", percent(foretold.mean()));
    ArrayNode speeds = to.putArray("u_by_speed");
    for (Promise.AtSpeed at : foretold.speeds()) {
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
    to.put("step", Field.word(step.kind()));
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

  private static double percent(double share) {
    return round(100 * share, 4);
  }

  private static double round(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }
}
