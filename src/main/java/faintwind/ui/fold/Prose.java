package faintwind.ui.fold;

import faintwind.message.Typeset;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** A label that takes as many lines as its words need, and the width they need to be read. */
public class Prose extends Label {

  public Prose() {
    this("");
  }

  public Prose(String text) {
    super(text);
    setWrapText(true);
    setMinHeight(Region.USE_PREF_SIZE);
    set(text);
    textProperty().addListener((property, was, now) -> set(now));
  }

  private void set(@Nullable String text) {
    String set = text == null ? "" : Typeset.of(text);
    if (text != null && !set.equals(text) && !textProperty().isBound()) {
      setText(set);
    }
  }

  @Override
  protected double computeMinWidth(double height) {
    return Need.width_px(this, computePrefWidth(-1));
  }
}
