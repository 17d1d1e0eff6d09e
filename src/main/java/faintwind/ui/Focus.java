package faintwind.ui;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;

/** Where the focus goes. */
final class Focus {
  private Focus() {}

  /** The first node under another that takes the focus; empty where none does. */
  static Optional<Node> first(Node under) {
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
