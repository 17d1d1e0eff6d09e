package faintwind.files;

import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Collects the problems of one input. Of one kind in one column only the first ten are listed, then
 * their number: a file with a million bad rows must not give a million lines.
 */
public final class ProblemList {
  private static final int LISTED = 10;

  private record Kind(String id, Severity severity, Where column) {}

  private final List<Problem> problems = new ArrayList<>();
  private final Map<Kind, Integer> counts = new LinkedHashMap<>();

  public void add(Problem problem) {
    if (problems.contains(problem)) {
      return;
    }
    Kind kind = kind(problem);
    int count = counts.merge(kind, 1, Integer::sum);
    if (count <= LISTED) {
      problems.add(problem);
    }
  }

  public void addAll(Iterable<Problem> more) {
    more.forEach(this::add);
  }

  public void error(String id, Where where, String found, String... details) {
    add(Problem.error(id, where, found, details));
  }

  public void warning(String id, Where where, String found, String... details) {
    add(Problem.warning(id, where, found, details));
  }

  public boolean hasErrors() {
    return problems.stream().anyMatch(Problem::isError);
  }

  /** What was collected, with one line for each kind that was cut short. */
  public List<Problem> list() {
    List<Problem> all = new ArrayList<>(problems);
    counts.forEach(
        (kind, count) -> {
          if (count > LISTED) {
            String more = String.valueOf(count - LISTED);
            all.add(new Problem("file.and-more", kind.severity(), kind.column(), more, List.of()));
          }
        });
    return all;
  }

  private static Kind kind(Problem problem) {
    Where place = problem.where();
    Where column = place.file().map(Where::file).orElse(Where.NOWHERE);
    if (place.column().isPresent()) {
      column = column.atColumn(place.column().get());
    }
    return new Kind(problem.id(), problem.severity(), column);
  }
}
