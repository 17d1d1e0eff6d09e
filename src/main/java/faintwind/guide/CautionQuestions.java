package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.Optional;

/**
 * Whether a caution's question is still to be asked: once an instrument and person. Where the same
 * caution comes again in another step, reading it is enough. In a class nobody gives a name: it is
 * asked as often as a pair has members.
 */
public final class CautionQuestions {
  private CautionQuestions() {}

  /** The question for a person; empty where there is none, or it was answered before. */
  public static Optional<Caution.Ask> of(
      Caution caution, Checklist checklist, InstrumentState state, String who) {
    boolean alone = state.members() == 1;
    long answered =
        state.standing(CautionAcknowledged.class).stream()
            .filter(line -> !alone || line.who().equals(who.strip()))
            .flatMap(line -> caution(checklist, line).stream())
            .filter(read -> read.text().equals(caution.text()))
            .count();
    return answered < state.members() ? caution.ask() : Optional.empty();
  }

  private static Optional<Caution> caution(
      Checklist checklist, Standing<CautionAcknowledged> line) {
    return line.step()
        .flatMap(checklist::step)
        .flatMap(step -> step.caution(line.event().caution()));
  }
}
