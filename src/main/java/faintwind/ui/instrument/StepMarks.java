package faintwind.ui.instrument;

import faintwind.guide.Pressing;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.guide.checklist.Stage;
import faintwind.ui.part.Mark;
import java.util.Comparator;
import java.util.List;

/** Which mark stands for the state of a step or a stage. */
public final class StepMarks {
  private static final List<Mark> PRESSING =
      List.of(Mark.BLOCKED, Mark.ATTENTION, Mark.DOING, Mark.WAITING);

  private StepMarks() {}

  /**
   * A step that waits for another is an empty length; cut is only one whose own readings or answers
   * say stop.
   */
  public static Mark of(StepProgress step) {
    return switch (step.state()) {
      case READY -> Mark.READY;
      case DOING -> Mark.DOING;
      case WAITING -> Mark.WAITING;
      case NEEDS_ATTENTION -> Mark.ATTENTION;
      case BLOCKED -> Pressing.stopsItself(step) ? Mark.BLOCKED : Mark.READY;
      case DONE, NOT_NEEDED -> Mark.DONE;
      case CORRECTED -> Mark.CORRECTED;
    };
  }

  /** A stage shows its most pressing step; whole only when every step is settled. */
  public static Mark of(Stage stage, Progress progress) {
    List<StepProgress> steps = steps(stage, progress);
    List<Mark> marks = steps.stream().map(StepMarks::of).toList();
    for (Mark pressing : PRESSING) {
      if (marks.contains(pressing)) {
        return pressing;
      }
    }
    if (!steps.stream().allMatch(step -> step.state().settled())) {
      return Mark.READY;
    }
    return marks.contains(Mark.CORRECTED) ? Mark.CORRECTED : Mark.DONE;
  }

  /** Whether every step of the stage was made needless by an answer. */
  public static boolean notNeeded(Stage stage, Progress progress) {
    return steps(stage, progress).stream().allMatch(s -> s.state() == StepState.NOT_NEEDED);
  }

  public static List<StepProgress> steps(Stage stage, Progress progress) {
    return progress.steps().stream().filter(s -> stage.steps().contains(s.step())).toList();
  }

  /** The most pressing first: for the order of instruments. */
  public static Comparator<Mark> byNeed() {
    return Comparator.comparingInt(
        mark ->
            switch (mark) {
              case BLOCKED -> 0;
              case ATTENTION -> 1;
              case DOING -> 2;
              case READY -> 3;
              case WAITING -> 4;
              case CORRECTED, DONE -> 5;
              case REHEARSAL -> 6;
            });
  }
}
