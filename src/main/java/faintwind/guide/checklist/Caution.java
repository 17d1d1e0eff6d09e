package faintwind.guide.checklist;

import java.util.Locale;

/**
 * Something to be read and answered before the instruction is shown. It is acknowledged one by one,
 * with name and time, and cannot be waived.
 *
 * @param id unique in its step
 * @param level what it can do
 * @param text the reason and what to do
 * @param source where that is written, or "common practice, no source"
 */
public record Caution(String id, Level level, String text, String source) {

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
