package faintwind.guide.checklist;

import java.util.Optional;

/**
 * What a pattern of readings means.
 *
 * @param id unique in its checklist
 * @param when the pattern, over readings ({@code reading_…}) and the design sheet
 * @param rank 1 for a pattern that leaves little doubt; higher for what is merely possible
 * @param words the words
 */
public record Remedy(String id, Condition when, int rank, Words words) {

  /**
   * The words; each may hold {@code {values}}.
   *
   * @param cause what is broken, in a sentence
   * @param because why these readings say so
   * @param todo what to do first: nothing that cannot be undone
   * @param apart the reading that would tell it from the other causes that fit
   * @param last what is left after the ladder, where it cannot be undone
   */
  public record Words(
      String cause, String because, String todo, Optional<String> apart, Optional<String> last) {}
}
