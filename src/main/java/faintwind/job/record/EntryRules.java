package faintwind.job.record;

import faintwind.guide.Situation;
import faintwind.guide.Voids;
import faintwind.guide.Waivers;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.List;
import java.util.Optional;

/** What an entry must be before it is written, beside the rules of its step. */
final class EntryRules {
  private EntryRules() {}

  /** Whether an event has a way of its own, with its own rules. */
  static boolean isJudged(Event event) {
    return event instanceof StepFinished
        || event instanceof ReadingEntered
        || event instanceof QuestionAnswered
        || event instanceof CautionAcknowledged
        || event instanceof ClockStarted
        || event instanceof ClockConfirmed
        || event instanceof MeterChosen
        || event instanceof Waived
        || event instanceof Corrected;
  }

  /** Whether an event can stand in another's place: of its kind, and about the same thing. */
  static boolean isLike(Event struck, Event replacement) {
    if (struck instanceof ReadingEntered a && replacement instanceof ReadingEntered b) {
      return a.reading().equals(b.reading());
    }
    if (struck instanceof QuestionAnswered a && replacement instanceof QuestionAnswered b) {
      return a.question().equals(b.question());
    }
    boolean fixed =
        replacement instanceof CautionAcknowledged
            || replacement instanceof Waived
            || replacement instanceof StepFinished;
    return !fixed && struck.getClass().equals(replacement.getClass());
  }

  /** A waiver, where the rules of {@link Waivers} let it be written. */
  static Checked<Event> waiver(
      InstrumentView view, Step step, Waived waiver, String who, Situation situation) {
    Where where = Where.step(step.id());
    if (step.caution(waiver.what()).isPresent()) {
      return Checked.refused(Problem.error("enter.caution-not-waived", where, waiver.what()));
    }
    if (!Waivers.isWaivable(step, waiver.what())) {
      return Checked.refused(Problem.error("enter.unknown-item", where, waiver.what(), step.id()));
    }
    List<Problem> refusals = Waivers.refusals(view.checklist(), step, waiver, who, situation);
    return refusals.isEmpty() ? Checked.ok(waiver) : Checked.refused(refusals);
  }

  /** Why a reading that was just written tests something else than its step asks for, if so. */
  static Optional<Problem> voidCause(InstrumentView view, JournalEntry entry) {
    InstrumentState after = Voids.applied(view.checklist(), view.state().with(entry));
    return after.lines().get(after.lines().size() - 1).voidCause();
  }
}
