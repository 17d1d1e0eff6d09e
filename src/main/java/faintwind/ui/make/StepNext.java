package faintwind.ui.make;

import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.ClockWords;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.make.StepView.ReadingLine;
import faintwind.ui.make.StepView.Trouble;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** What to do now in a step: the first thing that is missing, in the order of the sheet. */
final class StepNext {
  private static final Map<String, Place> PLACES =
      Map.of(
          "-design", Place.DESIGN,
          "-turntable", Place.TURNTABLE,
          "-formula", Place.FORMULA,
          "-use", Place.FIELD);

  /** A first sentence as short as "Below 1 MΩ." says what is wrong, and not what to do. */
  private static final int LEAST_SAID = 24;

  /** What can be done from the Next line of a step. */
  interface Acts {
    /** Shows another step. */
    void open(String id);

    /** Asks for the focus on a reading. */
    void wantFocus(String reading);

    /** Starts the step's clock. */
    void startClock();

    /** Says that the computer's time is right, so that the clock has ended. */
    void confirmTime();

    /** Calls the step finished. */
    void finish();

    /** The next step to look at: one that can be worked on, else the first that is not settled. */
    Optional<StepProgress> following();

    /** The next step after this one that can be worked on now. */
    Optional<StepProgress> workable();
  }

  private final Messages words;
  private final Acts model;
  private final Runnable addPhoto;
  private final Consumer<Place> go;
  private final WayThere way;

  StepNext(Messages words, Acts model, Runnable addPhoto, Consumer<Place> go) {
    this.words = words;
    this.model = model;
    this.addPhoto = addPhoto;
    this.go = go;
    way = new WayThere(words, model::open);
  }

  Next of(Step step, Standpoint now, StepView view) {
    if (!now.view().writable()) {
      return readOnly(now);
    }
    Next next = inStep(step, now, view);
    return now.view()
        .checklist()
        .stageOf(step.id())
        .flatMap(StepNext::placeOf)
        .filter(place -> view.outcome().missing().isEmpty())
        .map(this::toPlace)
        .filter(there -> next.act().filter(act -> act.id().equals(there.id())).isEmpty())
        .map(next::withOther)
        .orElse(next);
  }

  /** Nothing is asked for that could not be entered: why not is all that is said. */
  private Next readOnly(Standpoint now) {
    String why =
        now.view().problems().stream()
            .filter(Problem::isError)
            .findFirst()
            .map(words::sentence)
            .orElse("");
    return Next.say(Mark.BLOCKED, words.text("window.next.read-only")).withDetail(why);
  }

  /** The place in the window where the work of a stage is done, where it is not in the steps. */
  private static Optional<Place> placeOf(Stage stage) {
    return PLACES.entrySet().stream()
        .filter(entry -> stage.id().endsWith(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private Act toPlace(Place place) {
    return new Act(
        "open-" + place.id(),
        words.text("window.next.place", words.text(place.key())),
        () -> go.accept(place));
  }

  private Next inStep(Step step, Standpoint now, StepView view) {
    StepProgress where = now.progress().step(step.id()).orElseThrow();
    if (where.state() == StepState.NOT_NEEDED) {
      return goOn(Mark.DONE, words.text("window.next.not-needed"));
    }
    return before(now, view)
        .or(() -> waitsForReading(view))
        .or(() -> trouble(view))
        .or(() -> firstMissing(where, step))
        .orElseGet(() -> finished(step, where, now, view));
  }

  /** Steps, gates, cautions and questions, which all come before the readings. */
  private Optional<Next> before(Standpoint now, StepView view) {
    if (!view.outcome().missing().isEmpty()) {
      return Optional.of(way.of(now, view.outcome().missing()));
    }
    long open = view.cautions().stream().filter(caution -> caution.isOpen()).count();
    if (open > 0) {
      return Optional.of(
          Next.say(Mark.BLOCKED, words.text("window.next.caution", open))
              .withDetail(words.text("window.next.caution-detail")));
    }
    for (StepView.Asked asked : view.questions()) {
      if (asked.chosen().isEmpty()) {
        return Optional.of(Next.say(Mark.DOING, words.text("window.next.answer", asked.text())));
      }
      if (!asked.stop().isEmpty()) {
        return Optional.of(
            Next.say(Mark.BLOCKED, words.text("window.next.ends")).withDetail(asked.stop()));
      }
    }
    return Optional.empty();
  }

  private Optional<Next> waitsForReading(StepView view) {
    // A stop is told at once; what is still to be measured can wait.
    boolean stopped =
        view.outcome().trouble().filter(trouble -> trouble.mark() == Mark.BLOCKED).isPresent();
    Optional<ReadingLine> empty =
        view.readings().stream().filter(line -> !line.answer().isGiven()).findFirst();
    return stopped
        ? Optional.empty()
        : empty.map(
            line ->
                Next.say(Mark.DOING, words.text("window.next.measure", line.label()))
                    .withDetail(words.text("window.next.expected", line.expected())));
  }

  private Optional<Next> trouble(StepView view) {
    return view.outcome()
        .trouble()
        .map(
            t -> {
              // One sentence to act on; what comes after it stands small below.
              int end = t.todo().indexOf(". ", LEAST_SAID);
              String first = end < 0 ? t.todo() : t.todo().substring(0, end + 1);
              String rest = end < 0 ? t.locked() : t.todo().substring(end + 2);
              return Next.say(t.mark(), first, measureAgain(t)).withDetail(rest);
            });
  }

  private Act measureAgain(Trouble trouble) {
    return act(
        "measure-again", "window.next.measure-again", () -> model.wantFocus(trouble.waivable()));
  }

  private Optional<Next> firstMissing(StepProgress where, Step step) {
    for (Problem reason : where.reasons()) {
      switch (reason.id()) {
        case "gate.clock-not-started" -> {
          return Optional.of(
              Next.say(
                  Mark.DOING,
                  words.text("window.next.clock", reason.found()),
                  act("start-clock", "window.next.start-clock", model::startClock)));
        }
        case "gate.clock-runs", "gate.clock-set-back" -> {
          return Optional.of(waiting(where, step));
        }
        case "gate.clock-leapt" -> {
          return Optional.of(
              Next.say(
                      Mark.ATTENTION,
                      words.text("window.next.clock-leapt"),
                      act("confirm-time", "window.next.confirm-time", model::confirmTime))
                  .withDetail(words.text("window.next.clock-leapt-detail")));
        }
        case "gate.photo" -> {
          return Optional.of(
              Next.say(
                  Mark.DOING,
                  words.text("window.next.photo", reason.found()),
                  act("add-photo", "window.next.add-photo", addPhoto)));
        }
        default -> {
          if (!reason.id().equals("gate.not-finished")) {
            return Optional.of(Next.say(Mark.ATTENTION, words.sentence(reason)));
          }
        }
      }
    }
    return Optional.empty();
  }

  private Next waiting(StepProgress where, Step step) {
    String left = where.clock().map(c -> new ClockWords(words).left(c)).orElse("");
    Next next = Next.say(Mark.WAITING, words.text("window.next.wait", left, clockName(step)));
    return where.clock().filter(c -> c.stand() == StepClock.Stand.TIME_SET_BACK).isPresent()
        ? Next.say(
            Mark.ATTENTION,
            words.text("window.next.clock-set-back"),
            act("start-clock", "window.next.start-clock", model::startClock))
        : model
            .workable()
            .map(
                s ->
                    next.withDetail(words.text("window.next.meanwhile", s.step().title()))
                        .withOther(
                            act("go-on", "window.next.go-on", () -> model.open(s.step().id()))))
            .orElse(next);
  }

  private static String clockName(Step step) {
    return step.asks().clock().map(Step.ClockSpec::label).orElse("");
  }

  private Next finished(Step step, StepProgress where, Standpoint now, StepView view) {
    boolean isFinished = now.situation().state().finished(step.id()).isPresent();
    if (isFinished && where.doubts().isEmpty()) {
      return goOn(StepMarks.of(where), words.text("window.next.done"));
    }
    String sentence =
        isFinished ? words.text("window.next.finish-again") : words.text(closing(view.readings()));
    return Next.say(
        isFinished ? Mark.ATTENTION : Mark.DOING,
        sentence,
        act("finish-step", "window.next.finish-step", model::finish));
  }

  /** Good is said only where everything was judged, and is. */
  private static String closing(List<ReadingLine> readings) {
    if (readings.isEmpty()) {
      return "window.next.finish-plain";
    }
    return readings.stream().allMatch(line -> line.answer().mark() == Mark.DONE)
        ? "window.next.finish"
        : "window.next.finish-waived";
  }

  private Next goOn(Mark mark, String sentence) {
    return model
        .following()
        .map(
            s ->
                Next.say(
                        mark,
                        sentence,
                        act("go-on", "window.next.go-on", () -> model.open(s.step().id())))
                    .withDetail(words.text("window.next.follows", s.step().title())))
        .orElseGet(() -> Next.say(mark, words.text("window.next.all-done"), toPlace(Place.FIELD)));
  }

  private Act act(String id, String key, Runnable run) {
    return new Act(id, words.text(key), run);
  }
}
