package faintwind.ui.make;

import faintwind.guide.Agenda;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.ui.instrument.ClockWords;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.part.Act;
import faintwind.ui.part.GateList.Missing;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Where to begin with what is missing before a step: what is missing may itself be closed, so the
 * way leads to the first step before it at which something can be done.
 */
final class WayThere {
  private final Messages words;
  private final Consumer<String> open;

  /**
   * Ways to steps.
   *
   * @param open shows the step of that id
   */
  WayThere(Messages words, Consumer<String> open) {
    this.words = words;
    this.open = open;
  }

  /** Something missing, and a step at which something can be done about it. */
  private record Way(Missing missing, StepProgress root) {}

  /** What to do first; something must be missing. */
  Next of(Standpoint now, List<Missing> missing) {
    Agenda agenda = Agenda.of(now.view().checklist(), now.progress());
    List<Way> ways = missing.stream().flatMap(m -> ways(m, now, agenda)).toList();
    // what a person can do something about comes before what only waits for its clock
    return ways.stream()
        .filter(way -> way.root().state() != StepState.WAITING)
        .findFirst()
        .or(() -> ways.stream().findFirst())
        .map(way -> first(way, isStep(way.missing(), now)))
        .orElseGet(() -> Next.say(Mark.READY, first(missing.get(0).text())));
  }

  private static Stream<Way> ways(Missing missing, Standpoint now, Agenda agenda) {
    return now.progress().step(missing.step()).stream()
        .flatMap(
            step ->
                agenda.later().stream()
                    .filter(later -> later.step().equals(step))
                    .findFirst()
                    .map(later -> later.until().stream())
                    .orElseGet(() -> Stream.of(step)))
        .map(root -> new Way(missing, root));
  }

  /** A step is missing by its title, a gate by what it says. */
  private static boolean isStep(Missing missing, Standpoint now) {
    return now.progress()
        .step(missing.step())
        .filter(step -> step.step().title().equals(missing.text()))
        .isPresent();
  }

  private Next first(Way way, boolean isStep) {
    Step root = way.root().step();
    Next next = Next.say(StepMarks.of(way.root()), first(root.title()), goTo(root.id()));
    if (way.root().state() == StepState.WAITING) {
      String left = way.root().clock().map(new ClockWords(words)::left).orElse("");
      return next.withDetail(words.text("window.next.first-clock", left));
    }
    if (!isStep) {
      return next.withDetail(way.missing().text());
    }
    return root.id().equals(way.missing().step())
        ? next
        : next.withDetail(words.text("window.next.first-waits", way.missing().text()));
  }

  private String first(String what) {
    return words.text("window.next.first", what);
  }

  private Act goTo(String step) {
    return new Act("go-to-missing", words.text("window.next.go-there"), () -> open.accept(step));
  }
}
