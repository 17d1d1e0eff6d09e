package faintwind.ui.record;

import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.record.Event;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.Map;
import java.util.Optional;

/** What each reading of the ledger is judged to be: the one that counts anew, others as then. */
final class RecordVerdicts {
  private final Checklist checklist;
  private final Situation situation;
  private final Map<String, Double> values;

  RecordVerdicts(Checklist checklist, Situation situation) {
    this.checklist = checklist;
    this.situation = situation;
    values = situation.values(checklist);
  }

  /** The verdict of a line; empty where it is no reading, cannot be judged, or is void. */
  Optional<ReadingVerdict> of(Standing<? extends Event> line) {
    if (!(line.event() instanceof ReadingEntered entered) || line.voidCause().isPresent()) {
      return Optional.empty();
    }
    Optional<Standing<ReadingEntered>> counting = counting(line, entered);
    Optional<Reading> reading =
        line.step().flatMap(checklist::step).flatMap(step -> step.reading(entered.reading()));
    boolean counts = counting.filter(c -> c.entry().equals(line.entry())).isPresent();
    return counts && reading.isPresent()
        ? Verdicts.of(reading.get(), counting.get(), situation, values)
            .map(Reading.Judgement::verdict)
        : entered.verdict();
  }

  /** Whether a later entry of the same reading counts in its place, though nobody struck it. */
  boolean isTakenAgain(Standing<? extends Event> line) {
    return line.stands()
        && line.event() instanceof ReadingEntered entered
        && counting(line, entered).filter(c -> !c.entry().equals(line.entry())).isPresent();
  }

  private Optional<Standing<ReadingEntered>> counting(
      Standing<? extends Event> line, ReadingEntered entered) {
    return line.step()
        .flatMap(checklist::step)
        .map(Step::id)
        .flatMap(step -> situation.state().reading(step, entered.reading()));
  }
}
