package faintwind.report.plot;

import java.awt.geom.Rectangle2D;

/**
 * A rectangle on the picture, pixels at 100 %.
 *
 * @param x left edge
 * @param y upper edge
 * @param width width
 * @param height height
 */
public record PlotBox(double x, double y, double width, double height) {
  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public Rectangle2D shape() {
    return new Rectangle2D.Double(x, y, width, height);
  }
}
