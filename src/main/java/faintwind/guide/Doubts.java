package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Standing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a later change made doubtful: a step that was finished with other numbers of the design, or
 * before something it rests on was corrected. Finishing the step again settles it.
 */
public final class Doubts {
  private static final double SAME = 1e-3;

  private Doubts() {}

  /** The doubts about one step; none where it is not finished. */
  public static List<Problem> of(Checklist checklist, Step step, Situation situation) {
    Optional<Standing<StepFinished>> finished = situation.state().finished(step.id());
    if (finished.isEmpty()) {
      return List.of();
    }
    List<Problem> doubts = new ArrayList<>();
    OffsetDateTime when = finished.get().at();
    byDesign(step, when, situation).ifPresent(doubts::add);
    Set<String> needs = checklist.allNeeds(step);
    for (Standing<? extends Event> line : situation.state().lines()) {
      boolean answer =
          line.event() instanceof ReadingEntered || line.event() instanceof QuestionAnswered;
      boolean later = line.strike().filter(strike -> strike.at().isAfter(when)).isPresent();
      boolean below = line.step().filter(needs::contains).isPresent();
      if (answer && later && below) {
        String id = line.step().orElseThrow();
        String title = checklist.step(id).map(Step::title).orElse(id);
        doubts.add(Problem.warning("doubt.corrected-before", Where.step(step.id()), title, id));
      }
    }
    return doubts.stream().distinct().toList();
  }

  private static Optional<Problem> byDesign(Step step, OffsetDateTime when, Situation situation) {
    Optional<DesignSheet> then = situation.sheetAt(when);
    Optional<DesignSheet> now = situation.sheet();
    if (then.isEmpty() || now.isEmpty() || then.equals(now)) {
      return Optional.empty();
    }
    Map<String, Double> before = Situation.values(then.get());
    Map<String, Double> after = Situation.values(now.get());
    List<String> changed =
        step.names().stream()
            .filter(Situation::isSheetName)
            .filter(name -> differs(before.get(name), after.get(name)))
            .toList();
    return changed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.warning(
                "doubt.design-changed", Where.step(step.id()), String.join(", ", changed)));
  }

  private static boolean differs(@Nullable Double a, @Nullable Double b) {
    if (a == null || b == null) {
      return !Objects.equals(a, b);
    }
    return Math.abs(a - b) > SAME * Math.max(Math.abs(a), Math.abs(b));
  }
}
