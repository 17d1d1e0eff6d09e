package faintwind.message;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The outcome of reading or judging something that came from outside: a value with notes, or a
 * refusal with <em>all</em> the problems found, never only the first.
 */
public sealed interface Checked<T> permits Checked.Ok, Checked.Refused {

  /** A value that can be used; the notes are warnings. */
  record Ok<T>(T value, List<Problem> notes) implements Checked<T> {
    public Ok {
      notes = List.copyOf(notes);
    }
  }

  /** No value; at least one problem. */
  record Refused<T>(List<Problem> problems) implements Checked<T> {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a refusal needs at least one problem");
      }
    }
  }

  static <T> Checked<T> ok(T value) {
    return new Ok<>(value, List.of());
  }

  static <T> Checked<T> ok(T value, List<Problem> notes) {
    return new Ok<>(value, notes);
  }

  static <T> Checked<T> refused(Problem... problems) {
    return new Refused<>(List.of(problems));
  }

  static <T> Checked<T> refused(List<Problem> problems) {
    return new Refused<>(problems);
  }

  /** Every problem or note, whatever the outcome. */
  default List<Problem> problems() {
    return fold((value, notes) -> notes, problems -> problems);
  }

  default boolean isOk() {
    return this instanceof Ok<T>;
  }

  /** One of two answers, by outcome. */
  default <R> R fold(OkCase<T, R> whenOk, Function<List<Problem>, R> whenRefused) {
    if (this instanceof Ok<T> ok) {
      return whenOk.apply(ok.value(), ok.notes());
    }
    return whenRefused.apply(((Refused<T>) this).problems());
  }

  default <R> Checked<R> map(Function<T, R> change) {
    return fold((value, notes) -> ok(change.apply(value), notes), Checked::refused);
  }

  /** The next step, which may refuse too; notes of both are kept. */
  default <R> Checked<R> then(Function<T, Checked<R>> next) {
    return fold(
        (value, notes) -> {
          Checked<R> result = next.apply(value);
          List<Problem> all = new ArrayList<>(notes);
          all.addAll(result.problems());
          return result.fold((r, own) -> ok(r, all), own -> refused(all));
        },
        Checked::refused);
  }

  /** A function of a value and its notes. */
  @FunctionalInterface
  interface OkCase<T, R> {
    R apply(T value, List<Problem> notes);
  }
}
