package faintwind.guide;

import faintwind.guide.checklist.StepClock;
import faintwind.record.Event;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.StepFinished;
import faintwind.record.Standing;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * What the journal knows of the computer's time. Entries stand in the order they were made, so a
 * time that goes backwards in the journal was wrong somewhere, and a clock that ended while nothing
 * was entered for very long may never have run.
 */
final class ClockEvidence {
  private ClockEvidence() {}

  /** The clock of that start, as far as the journal can be believed. */
  static StepClock clock(Standing<ClockStarted> line, Situation situation) {
    double duration_s = line.event().duration_s();
    OffsetDateTime now = situation.now();
    StepClock plain = new StepClock(line.at(), duration_s, now);
    if (isVouchedFor(line, plain.end(), situation)) {
      return plain;
    }
    OffsetDateTime start = line.at();
    OffsetDateTime before = line.at();
    OffsetDateTime after = now;
    boolean past = false;
    for (Standing<? extends Event> other : situation.state().lines()) {
      // an entry of the future was made by a clock that was wrong then: it proves nothing
      boolean counts = !other.at().isAfter(now);
      if (counts && !past && other.at().isAfter(start)) {
        start = other.at();
      }
      past = past || other.entry().equals(line.entry());
      if (counts && past) {
        boolean ended = other.at().isAfter(plain.end());
        before = !ended && other.at().isAfter(before) ? other.at() : before;
        after = ended && other.at().isBefore(after) ? other.at() : after;
      }
    }
    boolean silent = Duration.between(before, after).compareTo(OwnChoices.SILENCE) > 0;
    return new StepClock(start, duration_s, now, silent ? StepClock.Trust.LEAPT : plain.trust());
  }

  /** A person said that the time is right, or finished the step, after the clock had ended. */
  private static boolean isVouchedFor(
      Standing<ClockStarted> line, OffsetDateTime end, Situation situation) {
    String step = line.step().orElse("");
    List<Standing<ClockConfirmed>> confirmed =
        situation.state().standing(ClockConfirmed.class, step);
    List<Standing<StepFinished>> finished = situation.state().standing(StepFinished.class, step);
    return confirmed.stream()
            .filter(c -> c.event().clock().equals(line.event().clock()))
            .anyMatch(c -> !c.at().isBefore(end))
        || finished.stream().anyMatch(f -> !f.at().isBefore(end));
  }
}
