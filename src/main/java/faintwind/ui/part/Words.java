package faintwind.ui.part;

import faintwind.message.Typeset;
import faintwind.ui.fold.Prose;
import faintwind.ui.fold.ProseButton;
import faintwind.ui.fold.ProseLink;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Words that wrap instead of being cut. */
public final class Words {
  private Words() {}

  /** A label that takes as many lines as its words need. */
  public static Label label(String text, String... styles) {
    Label label = new Prose(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A number with its unit, or a word: in one line always. */
  public static Label whole(String text, String... styles) {
    Label label = new Label(Typeset.of(text));
    label.setMinWidth(Region.USE_PREF_SIZE);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A button whose words are never cut. */
  public static Button button(String id, String text, Runnable run) {
    Button button = new ProseButton(text);
    button.setId(id);
    button.setOnAction(event -> run.run());
    return button;
  }

  /** A link whose words are never cut. */
  public static Hyperlink link(String id, String text, Runnable run) {
    Hyperlink link = new ProseLink(text);
    link.setId(id);
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
