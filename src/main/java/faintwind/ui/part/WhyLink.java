package faintwind.ui.part;

import faintwind.message.Messages;
import java.util.function.Supplier;
import javafx.scene.control.Hyperlink;

/** "Why?" at the end of a row: opens its note in the margin, and closes it when asked again. */
public final class WhyLink extends Hyperlink {

  public WhyLink(String id, String about, Supplier<Note> note, Notes notes, Messages words) {
    super(words.text("window.why"));
    setId(id);
    getStyleClass().add("why");
    setMinWidth(USE_PREF_SIZE);
    setAccessibleText(words.text("window.why.about", about));
    setOnAction(event -> notes.toggle(note.get(), this));
  }
}
