package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.part.Notes;
import faintwind.ui.work.Background;
import java.time.Clock;
import java.util.function.Consumer;

/**
 * What every screen is handed.
 *
 * @param words texts in the person's language
 * @param background long work off the JavaFX thread
 * @param notes explanations in the margin
 * @param go shows another place of the same instrument, or all instruments
 * @param files asks for files and folders
 * @param look text size, theme, motion
 * @param clock the time of day
 */
public record Desk(
    Messages words,
    Background background,
    Notes notes,
    Consumer<Place> go,
    FileQuestion files,
    Look look,
    Clock clock) {

  /** Words in the person's language. */
  public String text(String key, Object... arguments) {
    return words.text(key, arguments);
  }
}
