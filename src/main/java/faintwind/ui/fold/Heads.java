package faintwind.ui.fold;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;

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
        && (folds(width_px) || rows.get().stream().anyMatch(row -> row.folds(width_px)));
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
