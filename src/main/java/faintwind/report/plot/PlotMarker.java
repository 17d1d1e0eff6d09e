package faintwind.report.plot;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Shape at each reading. */
public enum PlotMarker {
  NONE,
  /** Clockwise. */
  TRIANGLE_DOWN,
  /** Counter-clockwise. */
  TRIANGLE_UP,
  SQUARE,
  RING,
  DOT,
  CROSS;

  public Shape at(double x, double y) {
    return switch (this) {
      case TRIANGLE_DOWN -> triangle(x, y, 1);
      case TRIANGLE_UP -> triangle(x, y, -1);
      case SQUARE -> new Rectangle2D.Double(x - 4.5, y - 4.5, 9, 9);
      case CROSS -> cross(x, y);
      case NONE, RING, DOT -> new Ellipse2D.Double(x - 4.25, y - 4.25, 8.5, 8.5);
    };
  }

  private static Shape triangle(double x, double y, int down) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - 6, y - 5 * down);
    path.lineTo(x + 6, y - 5 * down);
    path.lineTo(x, y + 6 * down);
    path.closePath();
    return path;
  }

  private static Shape cross(double x, double y) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - 4, y - 4);
    path.lineTo(x + 4, y + 4);
    path.moveTo(x - 4, y + 4);
    path.lineTo(x + 4, y - 4);
    return path;
  }
}
