package faintwind.ui.part;

import faintwind.ui.fold.FoldingRow;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Boxes of the window, each with the style classes it is known by. */
public final class Boxes {
  private Boxes() {}

  /** Nodes beside one another; where there is no room, below one another. */
  public static FoldingRow row(String styles, Node... nodes) {
    return new FoldingRow(styles, nodes);
  }

  /** Nodes below one another. */
  public static VBox column(String styles, Node... nodes) {
    VBox column = new VBox(nodes);
    column.getStyleClass().addAll(styles.split(" "));
    return column;
  }

  /** Takes the room that is left in a row. */
  public static <R extends Region> R grow(R node) {
    HBox.setHgrow(node, Priority.ALWAYS);
    node.setMaxWidth(Double.MAX_VALUE);
    return node;
  }

  /** Pushes what follows to the end of a row. */
  public static Region gap() {
    return grow(new Region());
  }

  /** Shows a node, or takes it and its room away. */
  public static void present(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }
}
