package faintwind.ui.fold;

import faintwind.message.Typeset;
import javafx.scene.control.Labeled;
import org.jspecify.annotations.Nullable;

/** Words are set as they come: a number stays with its unit, and a minus is one. */
final class SetWords {
  private SetWords() {}

  /** Sets the words of a label, link or button now and at every change but of a bound text. */
  static void of(Labeled labeled) {
    set(labeled, labeled.getText());
    labeled.textProperty().addListener((property, was, now) -> set(labeled, now));
  }

  private static void set(Labeled labeled, @Nullable String text) {
    String set = text == null ? "" : Typeset.of(text);
    if (text != null && !set.equals(text) && !labeled.textProperty().isBound()) {
      labeled.setText(set);
    }
  }
}
