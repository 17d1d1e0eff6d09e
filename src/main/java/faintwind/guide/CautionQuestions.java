package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.InstrumentState;
import faintwind.record.Readers;
import faintwind.record.Standing;
import java.util.List;
import java.util.Optional;

/**
 * Whether a caution's question is still to be asked: once an instrument and person. Where the same
 * caution comes again in another step, reading it is enough. Each member of a pair is asked.
 */
public final class CautionQuestions {
  private CautionQuestions() {}

  /** The question for a person; empty where there is none, or it was answered before. */
  public static Optional<Caution.Ask> of(
      Caution caution, Checklist checklist, InstrumentState state, String who) {
    boolean alone = state.members() == 1;
    List<Standing<CautionAcknowledged>> answers =
        state.standing(CautionAcknowledged.class).stream()
            .filter(line -> !alone || line.who().equals(who.strip()))
            .filter(
                line ->
                    caution(checklist, line)
                        .filter(read -> read.text().equals(caution.text()))
                        .isPresent())
            .toList();
    int answered = alone ? answers.size() : Readers.of(state.name().orElse(""), answers).size();
    return answered < state.members() ? caution.ask() : Optional.empty();
  }

  private static Optional<Caution> caution(
      Checklist checklist, Standing<CautionAcknowledged> line) {
    return line.step()
        .flatMap(checklist::step)
        .flatMap(step -> step.caution(line.event().caution()));
  }
}
