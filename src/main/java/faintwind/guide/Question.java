package faintwind.guide;

import java.util.List;
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
   */
  public record Choice(String id, String text, Optional<String> stop, List<String> skips) {
    public Choice {
      skips = List.copyOf(skips);
    }
  }
}
