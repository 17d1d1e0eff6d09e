package faintwind.files.plan;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanChoice;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanTerms;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A turntable plan as a file: JSON, {@code "format": "faintwind-plan/1"}, valid against {@code
 * plan.schema.json}. It carries what the plan started from and both forms, so that a guide, a sheet
 * and another plan can be made from it.
 */
public final class PlanFile {
  private static final String FORMAT = "faintwind-plan/1";
  private static final JsonForm FORM = new JsonForm(Map.of(Interval.class, IntervalForm.class));

  private PlanFile() {}

  /** An interval is its three numbers. */
  @JsonFormat(shape = JsonFormat.Shape.ARRAY)
  @JsonPropertyOrder({"low", "nominal", "high"})
  interface IntervalForm {}

  /** The text of the file. */
  public static String text(PlannedSession planned) {
    ObjectNode file = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
    PlanTexts.write(planned.request(), file);
    file.set("response", FORM.write(planned.request().response()));
    ArrayNode plans = file.putArray("plans");
    plans.add(FORM.write(StoredPlan.of(planned.choice().staircase())));
    planned.choice().separate().ifPresent(p -> plans.add(FORM.write(StoredPlan.of(p))));
    return file.toPrettyString() + "\n";
  }

  /**
   * Reads a plan.
   *
   * @param path the file
   * @param name how it is called in a problem
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<PlannedSession> read(Path path, String name) throws IOException {
    return JsonFile.read(path, name).then(node -> planned(node, name));
  }

  /** The same from a text. */
  public static Checked<PlannedSession> parse(String text, String name) throws IOException {
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), name)
        .then(node -> planned(node, name));
  }

  private static Checked<PlannedSession> planned(ObjectNode node, String name) {
    Where where = Where.file(name);
    String format = node.path("format").asText();
    if (format.startsWith("faintwind-plan/") && !format.equals(FORMAT)) {
      return Checked.refused(
          Problem.error("plan.newer-format", where.atColumn("format"), format, FORMAT));
    }
    SchemaCheck check = SchemaCheck.of("plan");
    Checked<PlanTerms> terms;
    try {
      terms = PlanTerms.of(PlanTexts.read(node), field -> where.atColumn(field.path()));
    } catch (IllegalArgumentException | NoSuchElementException incomplete) {
      // something is missing that the terms cannot do without: the schema names it
      List<Problem> shape = check.problems(node, where);
      String why = String.valueOf(incomplete.getMessage());
      return Checked.refused(
          shape.isEmpty() ? List.of(Problem.error("plan.contradiction", where, why)) : shape);
    }
    List<Problem> problems = check.problems(node, where, terms.problems());
    return problems.isEmpty()
        ? terms.then(known -> planned(node, known, where))
        : Checked.refused(problems);
  }

  /** What contradicts itself is refused. */
  private static Checked<PlannedSession> planned(ObjectNode node, PlanTerms terms, Where where) {
    try {
      Map<Plan.Form, Plan> plans = new EnumMap<>(Plan.Form.class);
      for (JsonNode each : node.get("plans")) {
        Plan plan = FORM.read(each, StoredPlan.class).toModel();
        plans.put(plan.form(), plan);
      }
      PlanRequest request = terms.with(FORM.read(node.get("response"), Response.class));
      @Nullable Plan staircase = plans.get(Plan.Form.STAIRCASE);
      if (staircase == null) {
        return Checked.refused(Problem.error("plan.no-staircase", where.atColumn("plans"), ""));
      }
      Optional<Plan> separate = Optional.ofNullable(plans.get(Plan.Form.SEPARATE));
      return Checked.ok(new PlannedSession(request, new PlanChoice(staircase, separate)));
    } catch (IllegalArgumentException contradiction) {
      String why = String.valueOf(contradiction.getMessage());
      return Checked.refused(Problem.error("plan.contradiction", where, why));
    }
  }
}
