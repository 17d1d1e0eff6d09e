package faintwind.ui.fold;

import javafx.scene.control.Button;
import javafx.scene.layout.Region;

/** A button that takes as many lines as its words need, and the width they need to be read. */
public class ProseButton extends Button {

  public ProseButton() {
    this("");
  }

  public ProseButton(String text) {
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
