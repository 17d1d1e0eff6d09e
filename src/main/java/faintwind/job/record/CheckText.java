package faintwind.job.record;

import faintwind.files.JsonForm;
import faintwind.job.ToldProblem;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.util.List;

/** What a check found, for another program. */
public final class CheckText {
  private CheckText() {}

  private record Told(
      String format,
      String path,
      String kind,
      long errors,
      long warnings,
      List<ToldProblem> problems) {}

  /** The finding as JSON. */
  public static String json(String path, CheckPath.Finding finding, Messages messages) {
    List<Problem> problems = finding.problems();
    long errors = problems.stream().filter(Problem::isError).count();
    return JsonForm.text(
        new Told(
            "faintwind-check/1",
            path,
            finding.kind().replaceFirst("^check\\.kind\\.", ""),
            errors,
            problems.size() - errors,
            ToldProblem.of(problems, messages)));
  }
}
