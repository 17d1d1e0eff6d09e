package faintwind.demo;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A drawn stand-in for a photo, which says that it is one. */
final class DemoPicture {
  private DemoPicture() {}

  static Path of(String shows) throws IOException {
    BufferedImage image = new BufferedImage(480, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(new Color(0xF2F5F2));
    g.fillRect(0, 0, 480, 300);
    g.setColor(new Color(0x17211E));
    g.draw(new Line2D.Double(180, 130, 300, 130));
    g.setColor(new Color(0xA8481C));
    g.fill(new Ellipse2D.Double(120, 90, 80, 80));
    g.setColor(new Color(0x50657C));
    g.fill(new Ellipse2D.Double(280, 90, 80, 80));
    g.setColor(new Color(0x17211E));
    g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 16));
    g.drawString("Made-up picture, in place of a photo of", 24, 230);
    g.drawString(shows, 24, 256);
    g.dispose();
    Path file = Files.createTempFile("demo", ".png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
