package faintwind.report.picture;

import java.awt.Graphics2D;

/** Anything that can be drawn at a size: a plot or a drawing. */
public interface Picture {

  /**
   * Draws itself.
   *
   * @param g where to draw, origin at the upper left
   * @param size width and height in pixels at 100 %
   * @param style colours, faces, decimal mark
   */
  void draw(Graphics2D g, PictureSize size, PictureStyle style);

  /** A short name for the picture, for a title element or an accessible name. */
  String title();

  /** What the picture shows, in a sentence or two, for somebody who does not see it. */
  String description();
}
