package faintwind.ui.air;

import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.Opening;
import faintwind.calibration.flow.Traverse;
import java.util.List;
import java.util.function.Predicate;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;

/**
 * An opening as one looks at it, with its points: filled where something was read, ringed in the
 * colour of doing where one goes next. Its narrow side is drawn no smaller than a fifth of the long
 * one.
 */
final class OpeningDrawing extends Region {
  private static final double LONG = 240;
  private static final double EDGE = 24;
  private static final double NARROWEST = 0.2;
  private static final double DOT = 4.5;

  private final Group drawing = new Group();
  private final Traverse traverse;
  private final double width;
  private final double height;

  OpeningDrawing(Traverse traverse, String shows) {
    this.traverse = traverse;
    Opening opening = traverse.opening();
    double most = Math.max(opening.width_m(), opening.height_m());
    width = LONG * Math.max(NARROWEST, opening.width_m() / most);
    height = LONG * Math.max(NARROWEST, opening.height_m() / most);
    setId("opening-drawing");
    getStyleClass().addAll("drawing", "opening-drawing");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(shows);
    drawing.setManaged(false);
    getChildren().add(drawing);
  }

  /**
   * Draws it.
   *
   * @param done whether something was read at a point, by its number
   * @param next number of the point where one goes next; −1 for none
   */
  void show(Predicate<Integer> done, int next) {
    List<FlowPoint> points = traverse.points();
    drawing.getChildren().setAll(outline());
    lines(points);
    for (int i = 0; i < points.size(); i++) {
      double x = x(points.get(i));
      double y = y(points.get(i));
      if (i == next) {
        drawing.getChildren().add(shape(new Circle(x, y, 2 * DOT), "opening-next"));
      }
      String kind = done.test(i) ? "opening-done" : "opening-point";
      drawing.getChildren().add(shape(new Circle(x, y, DOT), kind));
    }
    if (next >= 0) {
      FlowPoint point = points.get(next);
      boolean right = x(point) < EDGE + width / 2;
      Text name = shape(new Text(point.name()), "opening-name");
      name.setX(x(point) + (right ? 3 * DOT : -7 * DOT));
      name.setY(y(point) - 2 * DOT);
      drawing.getChildren().add(name);
    }
    requestLayout();
  }

  private Shape outline() {
    return traverse.opening().shape() == Opening.Shape.ROUND
        ? shape(new Circle(EDGE + width / 2, EDGE + height / 2, width / 2), "opening-wall")
        : shape(new Rectangle(EDGE, EDGE, width, height), "opening-wall");
  }

  /** The way along each line of points. */
  private void lines(List<FlowPoint> points) {
    int last = points.get(points.size() - 1).line();
    for (int line = 0; line <= last; line++) {
      int number = line;
      List<FlowPoint> on = points.stream().filter(p -> p.line() == number).toList();
      FlowPoint first = on.get(0);
      FlowPoint end = on.get(on.size() - 1);
      drawing
          .getChildren()
          .add(shape(new Line(x(first), y(first), x(end), y(end)), "opening-line"));
    }
  }

  private static <S extends Shape> S shape(S shape, String styleClass) {
    shape.getStyleClass().add(styleClass);
    return shape;
  }

  private double x(FlowPoint point) {
    Opening opening = traverse.opening();
    boolean upright = opening.shape() == Opening.Shape.ROUND && point.line() == 1;
    return EDGE + width * (upright ? 0.5 : point.depth_m() / opening.width_m());
  }

  private double y(FlowPoint point) {
    Opening opening = traverse.opening();
    double up =
        opening.shape() != Opening.Shape.ROUND
            ? point.up_m() / opening.height_m()
            : point.line() == 1 ? point.depth_m() / opening.width_m() : 0.5;
    return EDGE + height * (1 - up);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double forWidth) {
    double wide = forWidth < 0 ? LONG + 2 * EDGE : forWidth;
    return Math.min(1, wide / (width + 2 * EDGE)) * (height + 2 * EDGE);
  }

  @Override
  protected double computeMinHeight(double forWidth) {
    return computePrefHeight(forWidth);
  }

  @Override
  protected void layoutChildren() {
    double scale = Math.min(1, getWidth() / (width + 2 * EDGE));
    drawing.getTransforms().setAll(new Scale(scale, scale));
    drawing.setLayoutX((getWidth() - scale * (width + 2 * EDGE)) / 2);
  }
}
