package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.Optional;

/**
 * Whether a caution's question is still to be asked: once an instrument and person. Where the same
 * caution comes again in another step, reading it is enough.
 */
public final class CautionQuestions {
  private CautionQuestions() {}

  /** The question for a person; empty where there is none, or it was answered before. */
  public static Optional<Caution.Ask> of(
      Caution caution, Checklist checklist, InstrumentState state, String who) {
    boolean answered =
        state.standing(CautionAcknowledged.class).stream()
            .filter(line -> line.who().equals(who.strip()))
            .flatMap(line -> caution(checklist, line).stream())
            .anyMatch(read -> read.text().equals(caution.text()));
    return answered ? Optional.empty() : caution.ask();
  }

  private static Optional<Caution> caution(
      Checklist checklist, Standing<CautionAcknowledged> line) {
    return line.step()
        .flatMap(checklist::step)
        .flatMap(step -> step.caution(line.event().caution()));
  }
}
