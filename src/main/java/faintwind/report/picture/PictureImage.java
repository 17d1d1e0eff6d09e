package faintwind.report.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Draws a picture into an image, for the window. */
public final class PictureImage {
  private PictureImage() {}

  /**
   * An image of the picture.
   *
   * @param scale device pixels for one pixel at 100 % (text size times screen scale), 0.25 to 8
   */
  public static BufferedImage of(
      Picture picture, PictureSize size, PictureStyle style, double scale) {
    if (!(scale >= 0.25 && scale <= 8)) {
      throw new IllegalArgumentException("scale = " + scale + ", allowed 0.25 to 8");
    }
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(size.width() * scale),
            (int) Math.ceil(size.height() * scale),
            BufferedImage.TYPE_INT_ARGB_PRE);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(scale, scale);
    picture.draw(g, size, style);
    g.dispose();
    return image;
  }
}
