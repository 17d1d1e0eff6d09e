package faintwind.ui.formula;

import faintwind.ui.part.Boxes;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Two plots side by side; one below the other where there is no room for both. */
final class PlotPair extends VBox {
  private static final double STACKED_EM = 46;

  private final Label measure = new Label();

  PlotPair(Node first, Node second) {
    getStyleClass().add("plot-pair");
    measure.setManaged(false);
    measure.setVisible(false);
    HBox row = Boxes.row("plot-pair", first, second);
    getChildren().addAll(measure, row);
    widthProperty()
        .addListener(
            (property, was, now) -> {
              double em = measure.getFont().getSize();
              boolean stacked = now.doubleValue() < STACKED_EM * em;
              if (stacked == getChildren().contains(row)) {
                row.getChildren().clear();
                getChildren().setAll(measure);
                if (stacked) {
                  getChildren().addAll(first, second);
                } else {
                  row.getChildren().setAll(first, second);
                  getChildren().add(row);
                }
              }
            });
  }
}
