package faintwind.ui.fold;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** A label that takes as many lines as its words need, and the width they need to be read. */
public class Prose extends Label {

  public Prose() {
    this("");
  }

  public Prose(String text) {
    super(text);
    setWrapText(true);
    setMinHeight(Region.USE_PREF_SIZE);
    SetWords.of(this);
  }

  @Override
  protected double computeMinWidth(double height) {
    return Need.width_px(this, computePrefWidth(-1));
  }
}
