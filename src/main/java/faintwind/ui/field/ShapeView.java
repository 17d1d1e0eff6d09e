package faintwind.ui.field;

import faintwind.report.figure.LogShape;
import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Polyline;

/** The shape of a kept log, the size of a word. */
final class ShapeView extends Pane {
  ShapeView(LogShape shape) {
    for (List<Double> line : shape.lines()) {
      Polyline drawn = new Polyline();
      drawn.getStyleClass().add("shape-line");
      getChildren().add(drawn);
      widthProperty().addListener(p -> place(drawn, line));
      heightProperty().addListener(p -> place(drawn, line));
    }
  }

  private void place(Polyline drawn, List<Double> line) {
    Double[] points = new Double[line.size()];
    for (int k = 0; k + 1 < line.size(); k += 2) {
      points[k] = getWidth() * line.get(k);
      points[k + 1] = getHeight() * line.get(k + 1);
    }
    drawn.getPoints().setAll(points);
  }
}
