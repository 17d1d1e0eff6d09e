package faintwind.files.plan;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.plan.PlanTerms;
import faintwind.calibration.plan.PlannedSession;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * A turntable plan as a file: JSON, {@code "format": "faintwind-plan/1"}, valid against {@code
 * plan.schema.json}. It carries what the plan started from and both forms, so that a guide, a sheet
 * and another plan can be made from it.
 */
public final class PlanFile {
  private static final String FORMAT = "faintwind-plan/1";

  private PlanFile() {}

  /** The text of the file. */
  public static String text(PlannedSession planned) {
    return PlanJson.object(planned).toPrettyString() + "\n";
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
    PlanReading reading = new PlanReading(node, where);
    Checked<PlanTerms> terms = reading.terms();
    List<Problem> problems = check.problems(node, where, terms.problems());
    return problems.isEmpty() ? terms.then(reading::planned) : Checked.refused(problems);
  }
}
