package faintwind.guide;

import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What can be done now, what waits for a clock, and what waits for what. Each step that is not
 * settled stands in exactly one of the three.
 *
 * @param now may be worked on
 * @param waiting a clock of its own runs
 * @param later has to wait for others, or says stop itself
 */
public record Agenda(List<StepProgress> now, List<StepProgress> waiting, List<Later> later) {

  public Agenda {
    now = List.copyOf(now);
    waiting = List.copyOf(waiting);
    later = List.copyOf(later);
  }

  /**
   * A step that cannot be begun, or that ends its way.
   *
   * @param step which
   * @param until the steps it comes down to: those before it that can be done now, that wait for a
   *     clock or that say stop; the step itself where one of its own readings or answers says stop
   */
  public record Later(StepProgress step, List<StepProgress> until) {
    public Later {
      until = List.copyOf(until);
    }
  }

  /** Sorts every step of a checklist. */
  public static Agenda of(Checklist checklist, Progress progress) {
    List<StepProgress> now = new ArrayList<>();
    List<StepProgress> waiting = new ArrayList<>();
    List<Later> later = new ArrayList<>();
    for (StepProgress step : progress.steps()) {
      switch (step.state()) {
        case READY, DOING -> now.add(step);
        case NEEDS_ATTENTION -> {
          // one that needs attention only because of a waiver has nothing left to do
          if (!step.reasons().isEmpty() || !step.doubts().isEmpty()) {
            now.add(step);
          }
        }
        case WAITING -> waiting.add(step);
        case BLOCKED -> later.add(new Later(step, until(checklist, progress, step)));
        case DONE, CORRECTED, NOT_NEEDED -> {
          // settled
        }
      }
    }
    return new Agenda(now, waiting, later);
  }

  private static List<StepProgress> until(
      Checklist checklist, Progress progress, StepProgress step) {
    Set<String> seen = new LinkedHashSet<>();
    List<StepProgress> roots = new ArrayList<>();
    follow(checklist, progress, step, seen, roots);
    return roots.isEmpty() ? List.of(step) : roots;
  }

  private static void follow(
      Checklist checklist,
      Progress progress,
      StepProgress step,
      Set<String> seen,
      List<StepProgress> roots) {
    for (StepProgress before : before(checklist, progress, step)) {
      if (!seen.add(before.step().id())) {
        continue;
      }
      if (before.state() == StepState.BLOCKED && !Pressing.stopsItself(before)) {
        follow(checklist, progress, before, seen, roots);
      } else {
        roots.add(before);
      }
    }
  }

  /** Unsettled steps directly before one: those it needs, and those that open its gates. */
  private static List<StepProgress> before(
      Checklist checklist, Progress progress, StepProgress step) {
    Set<String> ids = new LinkedHashSet<>(step.step().order().needs());
    for (String gate : step.step().order().behind()) {
      checklist.stepsOfGate(gate).forEach(opener -> ids.add(opener.id()));
    }
    return ids.stream()
        .flatMap(id -> progress.step(id).stream())
        .filter(s -> !s.state().settled() && !waived(s))
        .toList();
  }

  private static boolean waived(StepProgress step) {
    return step.state() == StepState.NEEDS_ATTENTION && step.reasons().isEmpty();
  }
}
