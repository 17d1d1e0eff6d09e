package faintwind.job;

import faintwind.message.Messages;
import faintwind.message.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A problem for another program, as {@code --json} tells it.
 *
 * @param id which problem, the same in every language
 * @param severity {@code error} or {@code warning}
 * @param place where
 * @param found what stood there
 * @param text what a person is told
 */
public record ToldProblem(String id, String severity, Place place, String found, String text) {

  /** Where it is; empty where it has no such place. */
  public record Place(
      Optional<String> file,
      OptionalInt line,
      Optional<String> column,
      Optional<String> step,
      Optional<String> run) {}

  /** Problems with the words of a language. */
  public static List<ToldProblem> of(List<Problem> problems, Messages messages) {
    return problems.stream().map(problem -> of(problem, messages)).toList();
  }

  private static ToldProblem of(Problem p, Messages messages) {
    return new ToldProblem(
        p.id(),
        p.severity().name().toLowerCase(Locale.ROOT),
        new Place(
            p.where().file(),
            p.where().line(),
            p.where().column(),
            p.where().step(),
            p.where().run()),
        p.found(),
        p.isError() ? messages.line(p) : messages.note(p));
  }
}
