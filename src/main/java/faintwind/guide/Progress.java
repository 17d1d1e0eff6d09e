package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.StepOpened;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where every step stands.
 *
 * @param steps in the checklist's order
 */
public record Progress(List<StepProgress> steps) {

  public Progress {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param step which
   * @param state where it stands
   * @param reasons what is missing before it can begin or be finished
   * @param doubts what a later change made doubtful
   * @param clock where one was started
   */
  public record StepProgress(
      Step step,
      StepState state,
      List<Problem> reasons,
      List<Problem> doubts,
      Optional<StepClock> clock) {
    public StepProgress {
      reasons = List.copyOf(reasons);
      doubts = List.copyOf(doubts);
    }
  }

  /** Whether a step is needed, as far as is known. */
  public boolean needs(Step step) {
    return step(step.id()).map(s -> s.state() != StepState.NOT_NEEDED).orElse(true);
  }

  /** Works out every step's state. */
  public static Progress of(Checklist checklist, Situation situation) {
    Optional<String> open = situation.state().last(StepOpened.class).flatMap(Standing::step);
    Requirements requirements = new Requirements(checklist, situation);
    List<StepProgress> all = new ArrayList<>();
    for (Step step : checklist.steps()) {
      List<Problem> doubts = requirements.doubts(step);
      List<Problem> toFinish = requirements.toFinish(step);
      StepState state = state(step, situation, requirements, doubts);
      if (state == StepState.READY && open.filter(step.id()::equals).isPresent()) {
        state = StepState.DOING;
      }
      all.add(new StepProgress(step, state, toFinish, doubts, Verdicts.clock(step, situation)));
    }
    return new Progress(all);
  }

  private static StepState state(
      Step step, Situation situation, Requirements requirements, List<Problem> doubts) {
    if (requirements.isSkipped(step)) {
      return StepState.NOT_NEEDED;
    }
    List<Problem> toFinish = requirements.toFinish(step);
    if (!requirements.toBegin(step).isEmpty() || isStopped(toFinish)) {
      return StepState.BLOCKED;
    }
    if (has(toFinish, "gate.clock-runs")) {
      return StepState.WAITING;
    }
    if (situation.state().finished(step.id()).isPresent()) {
      return finished(step, situation, toFinish, doubts);
    }
    boolean look =
        has(toFinish, "gate.reading-doubtful")
            || has(toFinish, "gate.reading-void")
            || has(toFinish, "gate.clock-set-back")
            || has(toFinish, "gate.clock-leapt");
    return look ? StepState.NEEDS_ATTENTION : StepState.READY;
  }

  private static StepState finished(
      Step step, Situation situation, List<Problem> toFinish, List<Problem> doubts) {
    boolean waived = !situation.state().standing(Event.Waived.class, step.id()).isEmpty();
    if (!toFinish.isEmpty() || !doubts.isEmpty() || waived) {
      return StepState.NEEDS_ATTENTION;
    }
    boolean struck = situation.state().lines(step.id()).stream().anyMatch(line -> !line.stands());
    return struck ? StepState.CORRECTED : StepState.DONE;
  }

  private static boolean isStopped(List<Problem> toFinish) {
    return has(toFinish, "gate.reading-stop") || has(toFinish, "gate.answer-stops");
  }

  private static boolean has(List<Problem> reasons, String id) {
    return reasons.stream().anyMatch(reason -> reason.id().equals(id));
  }

  /** The state of one step. */
  public Optional<StepProgress> step(String id) {
    return steps.stream().filter(s -> s.step().id().equals(id)).findFirst();
  }

  /** The step to do next: one that is open, else the first that may be begun; empty at the end. */
  public Optional<StepProgress> next() {
    for (StepState wanted :
        List.of(StepState.DOING, StepState.NEEDS_ATTENTION, StepState.READY, StepState.WAITING)) {
      Optional<StepProgress> found =
          steps.stream().filter(s -> s.state() == wanted && !waivedAndDone(s)).findFirst();
      if (found.isPresent()) {
        return found;
      }
    }
    return steps.stream().filter(s -> s.state() == StepState.BLOCKED).findFirst();
  }

  /** A step that needs attention only because of a waiver has nothing left to do. */
  private static boolean waivedAndDone(StepProgress s) {
    return s.state() == StepState.NEEDS_ATTENTION && s.reasons().isEmpty() && s.doubts().isEmpty();
  }
}
