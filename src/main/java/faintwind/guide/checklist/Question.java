package faintwind.guide.checklist;

import faintwind.guide.Situation;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something a step asks and a person answers with one of its choices.
 *
 * @param id unique in its step
 * @param text the question
 * @param choices at least two
 */
public record Question(String id, String text, List<Choice> choices) {

  public Question {
    choices = List.copyOf(choices);
  }

  /** The choice with that id. */
  public Optional<Choice> choice(String id) {
    return choices.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /**
   * One answer.
   *
   * @param id unique in its question
   * @param text as shown
   * @param stop where the answer ends the way: why, and the way out. It cannot be waived.
   * @param skips ids of steps that this answer makes needless
   * @param stopsIf where it ends the way only together with something else on record
   */
  public record Choice(
      String id, String text, Optional<String> stop, List<String> skips, List<StopIf> stopsIf) {
    public Choice {
      skips = List.copyOf(skips);
      stopsIf = List.copyOf(stopsIf);
    }

    /**
     * Why the answer ends the way, with all that is on record; empty where it does not. A condition
     * that names something not known does not hold.
     *
     * @param values of {@link Situation#values}
     */
    public Optional<String> stop(Map<String, Double> values) {
      return stop.or(
          () ->
              stopsIf.stream()
                  .filter(s -> s.when().holds(values).orElse(false))
                  .map(StopIf::text)
                  .findFirst());
    }
  }

  /**
   * A stop that depends on other answers, readings or the design.
   *
   * @param when over the design sheet, {@code reading_ID} and {@code answer_STEP_QUESTION_CHOICE},
   *     which is 1 where that answer was given and 0 where not
   * @param text why, and the way out
   */
  public record StopIf(Condition when, String text) {}
}
