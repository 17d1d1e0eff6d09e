package faintwind.guide.checklist;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something to be read and answered before the instruction is shown. It is acknowledged one by one,
 * with name and time, and cannot be waived.
 *
 * @param id unique in its step
 * @param level what it can do
 * @param text the reason and what to do
 * @param source where that is written, or "common practice, no source"
 * @param ask a question whose answer is in the text
 */
public record Caution(String id, Level level, String text, String source, Optional<Ask> ask) {

  /**
   * A short question that shows whether a caution was read.
   *
   * @param right the answer, which the text gives
   * @param wrong others that nobody gives who has read it
   */
  public record Ask(String question, String right, List<String> wrong) {
    public Ask {
      wrong = List.copyOf(wrong);
    }
  }

  /** The kind, which is said first. */
  public enum Level {
    INJURE,
    POISON,
    /** The part, not the person. */
    SPOIL;

    /** The word in files and bundle keys. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
