package faintwind.ui.part;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels that wrap instead of being cut. */
public final class Words {
  private Words() {}

  /** A label that takes as many lines as its words need. */
  public static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A hairline. */
  public static Region rule() {
    Region rule = new Region();
    rule.getStyleClass().add("rule");
    return rule;
  }
}
