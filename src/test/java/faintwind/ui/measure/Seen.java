package faintwind.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.skin.VirtualFlow;

/**
 * What can be seen of a scene: each visible node with the part of the window that shows it, and
 * whether it can be scrolled into sight.
 *
 * @param node visible, as all around it are
 * @param box where it is, in the scene
 * @param window the part of the scene through which it is seen
 * @param sideways whether a scroll bar brings in what is beyond the window's sides
 * @param upright the same for above and below
 */
record Seen(Node node, Bounds box, Bounds window, boolean sideways, boolean upright) {

  /** All visible nodes under a root that fills a scene of this size, parents first. */
  static List<Seen> under(Parent root, double width, double height) {
    List<Seen> all = new ArrayList<>();
    Bounds scene = new BoundingBox(0, 0, width, height);
    walk(new Seen(root, root.localToScene(root.getLayoutBounds()), scene, false, false), all);
    return all;
  }

  private static void walk(Seen seen, List<Seen> all) {
    all.add(seen);
    if (!(seen.node() instanceof Parent parent)) {
      return;
    }
    for (Node child : parent.getChildrenUnmodifiable()) {
      if (child.isVisible() && child.getOpacity() > 0) {
        walk(seen.child(child), all);
      }
    }
  }

  private Seen child(Node child) {
    Bounds at = child.localToScene(child.getLayoutBounds());
    if (child.getClip() == null) {
      return new Seen(child, at, window, sideways, upright);
    }
    Bounds hole = child.localToScene(child.getClip().getBoundsInParent());
    boolean across = sideways;
    boolean down = upright;
    Optional<ScrollPane> pane = scroller(child);
    if (pane.isPresent()) {
      across = pane.get().getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
      down = pane.get().getVbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
    } else if (inFlow(child)) {
      across = true;
      down = true;
    }
    return new Seen(child, at, common(window, hole), across, down);
  }

  private static Optional<ScrollPane> scroller(Node clipped) {
    return clipped.getStyleClass().contains("viewport")
            && clipped.getParent() instanceof ScrollPane pane
        ? Optional.of(pane)
        : Optional.empty();
  }

  private static boolean inFlow(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof VirtualFlow) {
        return true;
      }
    }
    return false;
  }

  /** What is in sight of it; empty where it is scrolled away. */
  Optional<Bounds> visible() {
    Bounds part = common(box, window);
    return part.getWidth() > 1 && part.getHeight() > 1 ? Optional.of(part) : Optional.empty();
  }

  static Bounds common(Bounds a, Bounds b) {
    double left = Math.max(a.getMinX(), b.getMinX());
    double top = Math.max(a.getMinY(), b.getMinY());
    double right = Math.min(a.getMaxX(), b.getMaxX());
    double low = Math.min(a.getMaxY(), b.getMaxY());
    Rectangle2D part =
        new Rectangle2D(left, top, Math.max(0, right - left), Math.max(0, low - top));
    return new BoundingBox(part.getMinX(), part.getMinY(), part.getWidth(), part.getHeight());
  }

  /** The ids of the nodes around it, or their style classes where they have none. */
  String path() {
    List<String> names = new ArrayList<>();
    for (Node up = node; up != null && names.size() < 7; up = up.getParent()) {
      String name = name(up);
      if (!name.isEmpty()) {
        names.add(0, name);
      }
    }
    return String.join(" > ", names);
  }

  private static String name(Node node) {
    if (node.getId() != null) {
      return "#" + node.getId();
    }
    boolean own = node instanceof Control || !node.getStyleClass().isEmpty();
    return own ? node.getClass().getSimpleName() + node.getStyleClass() : "";
  }
}
