package faintwind.ui.formula;

import faintwind.ui.fold.FoldingRow;
import javafx.scene.Node;

/** Two plots beside one another, or below one another where each would be too narrow. */
final class PlotPair extends FoldingRow {

  PlotPair(Node first, Node second) {
    super("plot-pair", first, second);
  }
}
