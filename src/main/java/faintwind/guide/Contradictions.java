package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where a journal contradicts itself: heated though the design or a reading says stop, finished
 * though something is missing, waived by nobody. An entry made when less was asked stays; what it
 * would no longer pass is named.
 */
public final class Contradictions {
  private static final String STOP = "gate.reading-stop";

  private static final Set<FileRole> HEATED =
      Set.of(FileRole.RUN, FileRole.RUNS_TABLE, FileRole.CHECK_TABLE);

  /** What of a finished step may be missing, the gravest first. */
  private static final List<String> MISSING =
      List.of(
          STOP,
          "gate.answer-stops",
          "gate.reading-missing",
          "gate.reading-void",
          "gate.reading-not-judged",
          "gate.reading-doubtful",
          "gate.unanswered",
          "gate.caution",
          Requirements.CAUTION_OF_PAIR);

  private final Checklist checklist;
  private final Situation situation;
  private final InstrumentState state;
  private final Requirements requirements;

  private Contradictions(Checklist checklist, Situation situation) {
    this.checklist = checklist;
    this.situation = situation;
    this.state = situation.state();
    this.requirements = new Requirements(checklist, situation);
  }

  /** Every contradiction; empty in a rehearsal, where nothing was measured. */
  public static List<Problem> of(Checklist checklist, Situation situation) {
    if (situation.state().rehearsal()) {
      return List.of();
    }
    Contradictions found = new Contradictions(checklist, situation);
    List<Problem> power = found.power();
    Set<String> told = new HashSet<>();
    power.forEach(problem -> told.add(problem.id() + problem.found()));
    List<Problem> all = new ArrayList<>(power);
    all.addAll(found.gates(told));
    all.addAll(found.finished());
    all.addAll(found.waivers());
    return List.copyOf(all);
  }

  /** Heated over a stop: of the design, or of a reading. */
  private List<Problem> power() {
    Optional<String> heated = heated();
    if (heated.isEmpty()) {
      return List.of();
    }
    List<Problem> problems = new ArrayList<>();
    List<Problem> design = PowerEvidence.design(situation);
    boolean byStep = !heatedSteps().isEmpty();
    boolean missing = !design.isEmpty() && !design.get(0).id().equals("power.design-stops");
    if (!design.isEmpty() && (byStep || !missing)) {
      problems.add(Problem.error("contradiction.heated-over-design", Where.NOWHERE, heated.get()));
      problems.addAll(design);
    }
    for (Step step : checklist.stepsOfGate(Gate.HEATER_POWER)) {
      for (Problem reason : requirements.toFinish(step)) {
        if (reason.id().equals(STOP)) {
          problems.add(
              error("contradiction.heated-over-reading", step, heated.get(), reason.found()));
        }
      }
    }
    return problems;
  }

  private Optional<String> heated() {
    return heatedSteps().stream()
        .map(Step::title)
        .findFirst()
        .or(
            () ->
                state.lines().stream()
                    .filter(line -> line.stands() && isHeatedFile(line.event()))
                    .map(line -> fileOf(line.event()))
                    .findFirst());
  }

  /** Steps that need power on the heater and in which something was done. */
  private List<Step> heatedSteps() {
    return stepsBehind(Gate.HEATER_POWER).stream().filter(this::isDoneAt).toList();
  }

  private List<Step> stepsBehind(String gate) {
    return checklist.steps().stream()
        .filter(s -> s.order().behind().contains(gate) && !requirements.isSkipped(s))
        .toList();
  }

  private boolean isDoneAt(Step step) {
    return state.lines().stream()
        .filter(line -> line.stands() && line.inStep(step.id()))
        .map(Standing::event)
        .anyMatch(
            e ->
                e instanceof StepFinished
                    || e instanceof ReadingEntered
                    || e instanceof ClockStarted);
  }

  private static boolean isHeatedFile(Event event) {
    return event instanceof CalibrationMade
        || (event instanceof FileAdded added && HEATED.contains(added.kind()));
  }

  private static String fileOf(Event event) {
    if (event instanceof CalibrationMade made) {
      return made.file();
    }
    return event instanceof FileAdded added ? added.file() : "";
  }

  /**
   * Gates behind which something was done and which would not open now.
   *
   * @param before what was told already
   */
  private List<Problem> gates(Set<String> before) {
    List<Problem> problems = new ArrayList<>();
    for (String gate : checklist.gates()) {
      Optional<Step> behind = stepsBehind(gate).stream().filter(this::isDoneAt).findFirst();
      List<Problem> reasons = requirements.gate(gate);
      if (behind.isPresent() && !reasons.isEmpty()) {
        List<Problem> told =
            reasons.stream()
                .filter(reason -> isTold(reason) && !before.contains(reason.id() + reason.found()))
                .map(p -> p.as(Severity.WARNING))
                .distinct()
                .toList();
        String id = "contradiction.gate." + gate;
        Where where = Where.step(behind.get().id());
        String title = behind.get().title();
        problems.add(Problem.warning(id, where, title, String.valueOf(told.size())));
        problems.addAll(told);
      }
    }
    return problems;
  }

  /** Of a step that is not finished, that alone: the rest of it is still to come. */
  private boolean isTold(Problem reason) {
    boolean open = reason.where().step().filter(step -> state.finished(step).isEmpty()).isPresent();
    return !reason.id().equals("gate.step-needed")
        && !reason.id().equals("gate.caution")
        && !reason.id().equals(Requirements.CAUTION_OF_PAIR)
        && (!open || reason.id().equals("gate.not-finished"));
  }

  /** Finished steps of which something is missing or says stop. */
  private List<Problem> finished() {
    List<Problem> problems = new ArrayList<>();
    for (Step step : checklist.steps()) {
      if (state.finished(step.id()).isPresent() && !requirements.isSkipped(step)) {
        List<String> missing =
            requirements.toFinish(step).stream()
                .filter(reason -> MISSING.contains(reason.id()))
                .sorted(Comparator.comparingInt(reason -> MISSING.indexOf(reason.id())))
                .map(Problem::found)
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
          problems.add(
              error(
                      "contradiction.finished",
                      step,
                      step.title(),
                      missing.get(0),
                      String.valueOf(missing.size() - 1))
                  .as(Severity.WARNING));
        }
      }
    }
    return problems;
  }

  /** Waivers that do not count. */
  private List<Problem> waivers() {
    List<Problem> problems = new ArrayList<>();
    for (Standing<Waived> line : state.standing(Waived.class)) {
      Optional<Step> step = line.step().flatMap(checklist::step);
      if (step.isEmpty() || isSettled(step.get(), line.event().what())) {
        continue;
      }
      List<Problem> refused =
          Waivers.refusals(checklist, step.get(), line.event(), line.who(), situation);
      refused.stream().map(p -> p.as(Severity.WARNING)).forEach(problems::add);
    }
    return problems;
  }

  /** Whether a reading turned out good in the end, so that its waiver no longer matters. */
  private boolean isSettled(Step step, String what) {
    return step.reading(what)
        .flatMap(reading -> Verdicts.of(checklist, step, reading, situation))
        .filter(j -> j.verdict() == ReadingVerdict.GOOD)
        .isPresent();
  }

  private static Problem error(String id, Step step, String found, String... details) {
    return Problem.error(id, Where.step(step.id()), found, details);
  }
}
