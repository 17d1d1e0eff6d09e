package faintwind.guide.checklist;

import java.util.List;
import java.util.Optional;

/**
 * One of the stages from parts to field.
 *
 * @param id folder name, such as {@code 03-plating}
 * @param title as shown
 * @param about what it brings, in a sentence or two
 * @param ends what one holds in one's hands at its end
 * @param banner words that stand at the head of each of its pages
 * @param steps in the order they are shown
 */
public record Stage(
    String id,
    String title,
    String about,
    Optional<String> ends,
    Optional<String> banner,
    List<Step> steps) {
  public Stage {
    steps = List.copyOf(steps);
  }
}
