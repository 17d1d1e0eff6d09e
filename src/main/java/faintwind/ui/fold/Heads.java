package faintwind.ui.fold;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Heads over the columns of rows: of use only where no row is folded, else they take no room. */
public class Heads extends FoldingRow {
  private Supplier<? extends List<? extends FoldingRow>> rows = () -> List.of();

  /** The rows under it, as wide as it is. */
  public void over(Supplier<? extends List<? extends FoldingRow>> under) {
    rows = under;
    requestLayout();
  }

  private boolean useless(double width_px) {
    return width_px > 0
        && (folds(width_px) || rows.get().stream().anyMatch(row -> folds(row, width_px)));
  }

  /** More heads than a row has parts stand over what is within a part, too. */
  private boolean folds(FoldingRow row, double width_px) {
    return row.folds(width_px)
        || (getManagedChildren().size() > row.parts_px(width_px).size()
            && foldsWithin(row, width_px));
  }

  private static boolean foldsWithin(Node node, double width_px) {
    if (node instanceof FoldingRow row) {
      return row.folds(width_px)
          || row.parts_px(width_px).entrySet().stream()
              .anyMatch(part -> foldsWithin(part.getKey(), part.getValue()));
    }
    return node instanceof VBox column
        && column.getChildren().stream()
            .filter(Node::isManaged)
            .anyMatch(child -> foldsWithin(child, inside(column, width_px)));
  }

  private static double inside(VBox column, double width_px) {
    return width_px - column.snappedLeftInset() - column.snappedRightInset();
  }

  @Override
  protected double computePrefHeight(double width) {
    return useless(width) ? 0 : super.computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    boolean shown = !useless(getWidth());
    for (Node head : getManagedChildren()) {
      head.setVisible(shown);
    }
    if (shown) {
      super.layoutChildren();
    }
  }
}
