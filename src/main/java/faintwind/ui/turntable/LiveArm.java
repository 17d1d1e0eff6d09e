package faintwind.ui.turntable;

import faintwind.calibration.run.Direction;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

/**
 * The arm from above, where the beat wants it: it moves by itself, the person follows. The dots are
 * the circle that nobody steps inside.
 */
final class LiveArm extends Region {
  private static final double SIZE = 256;
  private static final double MIDDLE = SIZE / 2;
  private static final double KEEP_OUT = 122;
  private static final double PATH = 96;
  private static final double BALL = 104;
  private static final double REFERENCE = 79;
  private static final double WEIGHT = 40;

  private final Arc sweep = new Arc(MIDDLE, MIDDLE, PATH, PATH, 90, 0);
  private final Line arm = shape(new Line(), "live-arm");
  private final Circle heated = shape(new Circle(8), "heated-ball");
  private final Circle reference = shape(new Circle(8), "reference-ball");
  private final Rectangle weight = shape(new Rectangle(18, 18), "live-weight");
  private final Polyline way = shape(new Polyline(), "live-way");
  private int marks = 4;

  LiveArm(String accessibleText) {
    setId("live-arm");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(accessibleText);
    setMinSize(SIZE, SIZE);
    setPrefSize(SIZE, SIZE);
    setMaxSize(SIZE, SIZE);
    sweep.setType(ArcType.OPEN);
    sweep.getStyleClass().add("live-sweep");
    ticks();
    show(0, Direction.CW, marks);
  }

  private static <S extends Shape> S shape(S shape, String styleClass) {
    shape.getStyleClass().add(styleClass);
    return shape;
  }

  private void ticks() {
    getChildren()
        .setAll(
            shape(new Circle(MIDDLE, MIDDLE, KEEP_OUT), "live-keep-out"),
            shape(new Circle(MIDDLE, MIDDLE, PATH), "live-circle"),
            sweep);
    for (int i = 0; i < marks; i++) {
      double angle = 2 * Math.PI * i / marks;
      double x = Math.sin(angle);
      double y = -Math.cos(angle);
      double inner = PATH - 10;
      double outer = PATH + 10;
      getChildren()
          .add(
              shape(
                  new Line(
                      MIDDLE + inner * x,
                      MIDDLE + inner * y,
                      MIDDLE + outer * x,
                      MIDDLE + outer * y),
                  "live-tick"));
    }
    getChildren().addAll(way, arm, weight, reference, heated);
    getChildren().add(shape(new Circle(MIDDLE, MIDDLE, 7), "live-axle"));
  }

  /**
   * Shows the arm.
   *
   * @param turns turns since it started; below zero it waits at the first mark
   * @param direction seen from above
   * @param marksPerTurn beats a turn
   */
  void show(double turns, Direction direction, int marksPerTurn) {
    if (marksPerTurn != marks) {
      marks = marksPerTurn;
      ticks();
    }
    double side = direction == Direction.CW ? 1 : -1;
    double gone = Math.max(0, turns);
    double angle = side * 2 * Math.PI * (gone - Math.floor(gone));
    double x = Math.sin(angle);
    double y = -Math.cos(angle);
    at(heated, BALL, x, y);
    at(reference, REFERENCE, x, y);
    arm.setStartX(MIDDLE - WEIGHT * x);
    arm.setStartY(MIDDLE - WEIGHT * y);
    arm.setEndX(MIDDLE + BALL * x);
    arm.setEndY(MIDDLE + BALL * y);
    weight.setX(MIDDLE - WEIGHT * x - 9);
    weight.setY(MIDDLE - WEIGHT * y - 9);
    weight.setRotate(Math.toDegrees(angle));
    sweep.setLength(-Math.toDegrees(angle));
    way(side);
  }

  private static void at(Circle ball, double radius, double x, double y) {
    ball.setCenterX(MIDDLE + radius * x);
    ball.setCenterY(MIDDLE + radius * y);
  }

  /** A small arrow near the middle: which way round. */
  private void way(double side) {
    way.getPoints().clear();
    for (int i = 0; i <= 12; i++) {
      double angle = side * Math.toRadians(100 + 8 * i);
      way.getPoints().addAll(MIDDLE + 54 * Math.sin(angle), MIDDLE - 54 * Math.cos(angle));
    }
    double end = side * Math.toRadians(196);
    double tip = side * Math.toRadians(186);
    way.getPoints().addAll(MIDDLE + 61 * Math.sin(tip), MIDDLE - 61 * Math.cos(tip));
    way.getPoints().addAll(MIDDLE + 54 * Math.sin(end), MIDDLE - 54 * Math.cos(end));
    way.getPoints().addAll(MIDDLE + 47 * Math.sin(tip), MIDDLE - 47 * Math.cos(tip));
  }
}
