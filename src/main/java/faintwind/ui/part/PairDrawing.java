package faintwind.ui.part;

import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.transform.Scale;

/** The two balls as a small sign: heated left, reference right. */
public final class PairDrawing extends Region {
  private static final double GRID_WIDTH = 52;
  private static final double GRID_HEIGHT = 24;
  private static final double RADIUS = 10;

  private final Group pair = new Group();

  /** Metal balls in ink and colour. */
  public static PairDrawing metal(String accessibleText) {
    return new PairDrawing("pair", accessibleText);
  }

  private PairDrawing(String styleClass, String accessibleText) {
    getStyleClass().addAll("pair-drawing", styleClass);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(accessibleText);
    Line wire = new Line(11, 12, 41, 12);
    wire.getStyleClass().add("pair-wire");
    pair.getChildren().addAll(wire, ball(11, "heated-ball"), ball(41, "reference-ball"));
    pair.setManaged(false);
    getChildren().add(pair);
  }

  private static Circle ball(double x, String styleClass) {
    Circle ball = new Circle(x, 12, RADIUS);
    ball.getStyleClass().add(styleClass);
    return ball;
  }

  @Override
  protected void layoutChildren() {
    double scale = Math.min(getWidth() / GRID_WIDTH, getHeight() / GRID_HEIGHT);
    pair.getTransforms().setAll(new Scale(scale, scale));
    pair.setLayoutY((getHeight() - GRID_HEIGHT * scale) / 2);
  }
}
