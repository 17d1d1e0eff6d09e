package faintwind.guide;

import faintwind.guide.Progress.StepProgress;
import faintwind.message.Problem;
import java.util.Optional;
import java.util.Set;

/** Which step of an instrument needs a person first: one that says stop, else the next one. */
public final class Pressing {
  private static final Set<String> OWN_STOPS = Set.of("gate.reading-stop", "gate.answer-stops");

  private Pressing() {}

  /** The step; empty where every one is settled. */
  public static Optional<StepProgress> of(Progress progress) {
    return progress.steps().stream().filter(Pressing::stopsItself).findFirst().or(progress::next);
  }

  /** Whether one of its own readings or answers says stop; a step that is not needed never does. */
  public static boolean stopsItself(StepProgress step) {
    return step.state() != StepState.NOT_NEEDED
        && step.reasons().stream().anyMatch(Pressing::isStop);
  }

  /** Whether a reason is a reading or an answer that says stop. */
  public static boolean isStop(Problem reason) {
    return OWN_STOPS.contains(reason.id());
  }
}
