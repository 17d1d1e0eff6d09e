package faintwind.ui.part;

import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;

/** The two tips of a meter, drawn over a picture that has a meter and named points. */
final class ProbeTips {
  private static final double TIP = 30;
  private static final double SLACK = 26;
  private static final double DOT = 3;
  private static final double DISPLAY_X = 286;
  private static final double DISPLAY_Y = 44;

  private ProbeTips() {}

  /** Both tips with their wires; the upper point goes to the upper socket. */
  static Group between(Point2D one, Point2D other, Point2D upper, Point2D lower) {
    boolean oneAbove = one.getY() < other.getY();
    Group both = new Group();
    tip(both, one, oneAbove ? upper : lower);
    tip(both, other, oneAbove ? lower : upper);
    return both;
  }

  /** What the meter is set to. */
  static Text display(String unit) {
    Text text = new Text(DISPLAY_X, DISPLAY_Y, unit);
    text.getStyleClass().add("pic-label");
    text.layoutBoundsProperty()
        .addListener((property, was, now) -> text.setTranslateX(-now.getWidth() / 2));
    return text;
  }

  private static void tip(Group into, Point2D at, Point2D socket) {
    Point2D way = socket.subtract(at).normalize();
    Point2D end = at.add(way.multiply(Math.min(TIP, at.distance(socket) / 2)));
    Line body = new Line(at.getX(), at.getY(), end.getX(), end.getY());
    body.getStyleClass().add("pic-thick");
    CubicCurve wire =
        new CubicCurve(
            end.getX(),
            end.getY(),
            end.getX() + way.getX() * SLACK,
            end.getY() + way.getY() * SLACK + SLACK,
            socket.getX() - SLACK,
            socket.getY(),
            socket.getX(),
            socket.getY());
    wire.getStyleClass().add("pic-ink");
    Circle dot = new Circle(at.getX(), at.getY(), DOT);
    dot.getStyleClass().add("pic-touch");
    into.getChildren().addAll(wire, body, dot);
  }
}
