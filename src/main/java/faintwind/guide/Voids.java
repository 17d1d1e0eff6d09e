package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Repaired;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Readings that tested something else than their step asks for: typed before the step was reached,
 * before its clock had ended (but for those that are taken before it is started), or before work
 * that undid what they showed. They stay in the record, struck, and count nowhere. The order is
 * that of the journal, whatever the computer's clock said. Own rule, no source.
 */
public final class Voids {
  private static final List<String> ELECTRICAL = List.of("Ω", "V", "A", "K");

  private final Checklist checklist;
  private final InstrumentState state;
  private final Set<String> skipped;

  /** Where in the journal a step was first finished, and where its work was last done. */
  private final Map<String, Integer> finished = new HashMap<>();

  private final Map<String, Integer> worked = new LinkedHashMap<>();

  /** The steps before a step, and those worked at that it rests on: asked for each reading. */
  private final Map<String, Set<String>> before = new HashMap<>();

  private final Map<String, List<String>> under = new HashMap<>();

  private Voids(Checklist checklist, InstrumentState state) {
    this.checklist = checklist;
    this.state = state;
    List<Standing<? extends Event>> lines = state.lines();
    for (int i = 0; i < lines.size(); i++) {
      Standing<? extends Event> line = lines.get(i);
      String step = line.step().orElse("");
      if (line.stands() && line.event() instanceof StepFinished) {
        finished.putIfAbsent(step, i);
      } else if (line.stands() && isWork(line.event())) {
        worked.put(step, i);
      }
    }
    skipped = Requirements.skipped(checklist, state);
  }

  /** The record with void readings struck; nothing else of it changes. */
  public static InstrumentState applied(Checklist checklist, InstrumentState state) {
    Voids voids = new Voids(checklist, state);
    Map<String, Problem> causes = new HashMap<>();
    for (int i = 0; i < state.lines().size(); i++) {
      Standing<? extends Event> line = state.lines().get(i);
      if (line.stands() && line.event() instanceof ReadingEntered entered) {
        voids.cause(line, entered, i).ifPresent(cause -> causes.put(line.entry(), cause));
      }
    }
    return causes.isEmpty() ? state : state.struck(causes);
  }

  private Optional<Problem> cause(Standing<?> line, ReadingEntered entered, int at) {
    Optional<Step> step = line.step().flatMap(checklist::step);
    Optional<Reading> reading = step.flatMap(s -> s.reading(entered.reading()));
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    return tooEarly(step.get(), at)
        .or(() -> clockRan(step.get(), line, at))
        .or(() -> undone(step.get(), reading.get(), at));
  }

  /** A step that this one needs, or that opens its gate, was not finished yet. */
  private Optional<Problem> tooEarly(Step step, int at) {
    for (String id : before.computeIfAbsent(step.id(), same -> before(step))) {
      if (finished.getOrDefault(id, Integer.MAX_VALUE) > at) {
        return Optional.of(problem("void.too-early", step, id));
      }
    }
    return Optional.empty();
  }

  private Set<String> before(Step step) {
    Set<String> before = new HashSet<>(step.order().needs());
    for (String gate : step.order().behind()) {
      checklist.stepsOfGate(gate).forEach(opener -> before.add(opener.id()));
    }
    before.removeIf(id -> checklist.step(id).isEmpty() || skipped.contains(id));
    return before;
  }

  /** The clock of its own step had not ended. */
  private Optional<Problem> clockRan(Step step, Standing<?> line, int at) {
    if (step.asks().clock().filter(spec -> !spec.afterReadings()).isEmpty()) {
      return Optional.empty();
    }
    String clock = step.asks().clock().get().id();
    boolean waived =
        state.standing(Waived.class, step.id()).stream()
            .anyMatch(waiver -> waiver.event().what().equals(clock));
    Optional<Standing<ClockStarted>> started =
        state.standing(ClockStarted.class, step.id()).stream()
            .filter(
                s -> s.event().clock().equals(clock) && state.place(s.entry()).orElseThrow() < at)
            .reduce((first, second) -> second);
    boolean ended =
        started.filter(s -> !line.at().isBefore(s.at().plus(duration(s.event())))).isPresent();
    return waived || ended
        ? Optional.empty()
        : Optional.of(problem("void.clock-ran", step, step.id()));
  }

  private static Duration duration(ClockStarted clock) {
    return Duration.ofMillis(Math.round(1000 * clock.duration_s()));
  }

  /** Work that the reading rests on was done again: glue, coat, mounting, a repair. */
  private Optional<Problem> undone(Step step, Reading reading, int at) {
    for (String id : under.computeIfAbsent(step.id(), same -> under(step))) {
      boolean own = id.equals(step.id()) && (sets(step, at) || checkedAgain(step, reading, at));
      boolean again = workedAfter(id, at) && !own;
      if (again && (isElectrical(reading) || inOneStage(step.id(), id))) {
        return Optional.of(problem("void.undone", step, id));
      }
    }
    return Optional.empty();
  }

  /** Whether a step was worked at after a line. */
  private boolean workedAfter(String step, int at) {
    Integer last = worked.get(step);
    return last != null && last > at;
  }

  /** In the order in which they were begun. */
  private List<String> under(Step step) {
    Set<String> needs = checklist.allNeeds(step);
    return worked.keySet().stream()
        .filter(id -> id.equals(step.id()) || needs.contains(id))
        .toList();
  }

  /** What was measured soft is all that was done since: its own clock was started, once. */
  private boolean sets(Step step, int at) {
    List<Standing<? extends Event>> later =
        state.lines().subList(at + 1, state.lines().size()).stream()
            .filter(line -> line.stands() && line.step().filter(step.id()::equals).isPresent())
            .filter(line -> isWork(line.event()))
            .toList();
    return step.asks().clock().filter(Step.ClockSpec::afterReadings).isPresent()
        && later.size() == 1
        && later.get(0).event() instanceof ClockStarted;
  }

  /**
   * A check that is made again and again, such as that in the jar: its clock settles it and undoes
   * nothing. The earlier value was right in its time, as soon as a later one was taken.
   */
  private boolean checkedAgain(Step step, Reading reading, int at) {
    List<Standing<? extends Event>> lines = state.lines();
    boolean later = false;
    for (int i = at + 1; i < lines.size(); i++) {
      Standing<? extends Event> line = lines.get(i);
      boolean here = line.stands() && line.inStep(step.id());
      if (here && line.event() instanceof Repaired) {
        return false;
      }
      later |=
          here
              && !workedAfter(step.id(), i - 1)
              && line.event() instanceof ReadingEntered entered
              && entered.reading().equals(reading.id())
              && clockRan(step, line, i).isEmpty();
    }
    return later && step.asks().clock().filter(spec -> !spec.afterReadings()).isPresent();
  }

  private static boolean isWork(Event event) {
    return event instanceof ClockStarted || event instanceof Repaired;
  }

  /** The room and the arm are as they were, whatever is soldered at the pair. */
  private static boolean isElectrical(Reading reading) {
    return ELECTRICAL.stream().anyMatch(unit -> NumberText.measureTheSame(unit, reading.unit()));
  }

  private boolean inOneStage(String one, String other) {
    return checklist.stages().stream()
        .map(Stage::steps)
        .anyMatch(steps -> has(steps, one) && has(steps, other));
  }

  private static boolean has(List<Step> steps, String id) {
    return steps.stream().anyMatch(step -> step.id().equals(id));
  }

  private Problem problem(String id, Step step, String because) {
    String title = checklist.step(because).map(Step::title).orElse(because);
    return Problem.warning(id, Where.step(step.id()), title);
  }
}
