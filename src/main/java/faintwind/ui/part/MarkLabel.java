package faintwind.ui.part;

import faintwind.message.Messages;
import faintwind.ui.fold.Prose;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** A mark with its word beside it; the word is what a screen reader says. */
public final class MarkLabel extends HBox {
  private final MarkShape shape;
  private final Label word = new Prose();

  /** The mark with its own word, such as "Blocked". */
  public MarkLabel(Mark mark, Messages words) {
    this(mark, words.text(mark.key()));
  }

  /** The mark with another word, such as "Stop" for a reading. */
  public MarkLabel(Mark mark, String text) {
    getStyleClass().add("mark-label");
    shape = new MarkShape(mark, text);
    word.getStyleClass().add("mark-word");
    getChildren().addAll(shape, word);
    show(mark, text);
  }

  /** Changes mark and word in place. */
  public void show(Mark mark, String text) {
    shape.show(mark, text, 0.4);
    word.setText(text);
    word.getStyleClass().removeIf(name -> name.startsWith("mark-") && !name.equals("mark-word"));
    word.getStyleClass().add(mark.styleClass());
  }
}
