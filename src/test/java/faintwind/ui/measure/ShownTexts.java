package faintwind.ui.measure;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;

/** The texts that stand on a screen. */
public final class ShownTexts {
  private ShownTexts() {}

  /** All texts under a root that can be seen; JavaFX thread. */
  public static List<String> under(Parent root) {
    double wide = root.getLayoutBounds().getWidth();
    return Seen.under(root, wide, root.getLayoutBounds().getHeight()).stream()
        .map(seen -> text(seen.node()))
        .filter(text -> !text.isEmpty())
        .distinct()
        .toList();
  }

  private static String text(Node node) {
    String text =
        node instanceof Labeled l ? l.getText() : node instanceof Text t ? t.getText() : "";
    return text == null ? "" : text;
  }
}
