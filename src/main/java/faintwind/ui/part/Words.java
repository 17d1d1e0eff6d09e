package faintwind.ui.part;

import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
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

  /** A label in one line. */
  public static Label plain(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A button whose words are never cut. */
  public static Button button(String id, String text, Runnable run) {
    Button button = new Button(text);
    button.setId(id);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> run.run());
    return button;
  }

  /** A link whose words are never cut. */
  public static Hyperlink link(String id, String text, Runnable run) {
    Hyperlink link = new Hyperlink(text);
    link.setId(id);
    link.setMinWidth(Region.USE_PREF_SIZE);
    link.setOnAction(event -> run.run());
    return link;
  }

  /** A hairline. */
  public static Region rule() {
    Region rule = new Region();
    rule.getStyleClass().add("rule");
    return rule;
  }
}
