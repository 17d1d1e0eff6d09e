package faintwind.ui.frame;

import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import org.jspecify.annotations.Nullable;

/** Where the focus goes. */
public final class Focus {
  private Focus() {}

  /** Scrolls so that a node is in sight, with its row where that fits; a node outside is left. */
  static void reveal(Node node, ScrollPane pane) {
    reveal(node, pane, false);
  }

  /**
   * Scrolls so that what has the focus stands in the upper half, what comes before and after it in
   * sight, too; where it is in sight already nothing moves.
   */
  static void amid(Node node, ScrollPane pane) {
    reveal(node, pane, true);
  }

  private static void reveal(Node node, ScrollPane pane, boolean amid) {
    Node content = pane.getContent();
    if (content == null || !isInside(node, content)) {
      return;
    }
    Node shown = selectedIn(node).or(() -> rowOf(node)).orElse(node);
    Bounds box = content.sceneToLocal(shown.localToScene(shown.getLayoutBounds()));
    double view = pane.getViewportBounds().getHeight();
    double hidden = content.getLayoutBounds().getHeight() - view;
    double top = pane.getVvalue() * hidden;
    if (hidden <= 0 || (box.getMinY() >= top && box.getMaxY() <= top + view)) {
      return;
    }
    double nearest = box.getMinY() < top ? box.getMinY() : box.getMaxY() - view;
    double above = Math.max(0, (view - box.getHeight()) / 3);
    double wanted = amid ? box.getMinY() - above : nearest;
    pane.setVvalue(Math.max(0, Math.min(1, wanted / hidden)));
  }

  /** The row that is selected, where a list has the focus. */
  private static Optional<Node> selectedIn(Node node) {
    return node instanceof ListView
        ? Optional.ofNullable(node.lookup(".list-cell:selected"))
        : Optional.empty();
  }

  /** Scrolls the pane it lies in so that a node is in sight. */
  public static void intoSight(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof ScrollPane pane) {
        reveal(node, pane);
        return;
      }
    }
  }

  /** Scrolls so that a node stands at the top of the pane it lies in. */
  public static void toTop(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof ScrollPane pane && pane.getContent() != null) {
        pane.layout();
        Node content = pane.getContent();
        Bounds box = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
        double hidden =
            content.getLayoutBounds().getHeight() - pane.getViewportBounds().getHeight();
        if (hidden > 0) {
          pane.setVvalue(Math.max(0, Math.min(1, box.getMinY() / hidden)));
        }
        return;
      }
    }
  }

  /** The row that a control belongs to: its nearest ancestor of style class "row". */
  public static Optional<Node> rowOf(Node control) {
    for (Node node = control; node != null; node = node.getParent()) {
      if (node.getStyleClass().contains("row")) {
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }

  /** Draws anew what lies under a node; what had the focus there has it again, by its id. */
  public static void keep(Node under, Runnable draw) {
    Optional<String> id =
        Optional.ofNullable(under.getScene())
            .map(Scene::getFocusOwner)
            .filter(owner -> isInside(owner, under))
            .map(Node::getId);
    draw.run();
    id.flatMap(had -> under.lookupAll("*").stream().filter(n -> had.equals(n.getId())).findFirst())
        .ifPresent(Node::requestFocus);
  }

  /** Whether a node is another or lies in it. */
  public static boolean isInside(@Nullable Node node, Node region) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up == region) {
        return true;
      }
    }
    return false;
  }

  /**
   * The first thing under a node that waits for a person: a caution that is not read, a question
   * without an answer, an empty field that has to be filled.
   */
  public static Optional<Node> nextEmpty(Node under) {
    if (!under.isVisible() || under.isDisabled() || under.getStyleClass().contains("optional")) {
      return Optional.empty();
    }
    if (under.isFocusTraversable() && isWaiting(under)) {
      return Optional.of(under);
    }
    return under instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream()
            .flatMap(child -> nextEmpty(child).stream())
            .findFirst()
        : Optional.empty();
  }

  private static boolean isWaiting(Node node) {
    if (node instanceof TextField field) {
      return field.isEditable() && field.getText().isEmpty();
    }
    if (node instanceof RadioButton button) {
      return button.getToggleGroup() != null && button.getToggleGroup().getSelectedToggle() == null;
    }
    return node.getStyleClass().contains("caution");
  }

  /** The first node under another that takes the focus; empty where none does. */
  public static Optional<Node> first(Node under) {
    if (!under.isVisible() || under.isDisabled()) {
      return Optional.empty();
    }
    if (under.isFocusTraversable()) {
      return Optional.of(under);
    }
    if (under instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        Optional<Node> found = first(child);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
