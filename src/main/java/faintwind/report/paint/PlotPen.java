package faintwind.report.paint;

import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PlotFonts;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** Lines, areas and words in a style; the words' widths are known before they are drawn. */
public final class PlotPen {
  private static final FontRenderContext METRICS = new FontRenderContext(null, true, true);

  private final Graphics2D g;
  private final PictureStyle style;

  public PlotPen(Graphics2D g, PictureStyle style) {
    this.g = g;
    this.style = style;
  }

  public PictureStyle style() {
    return style;
  }

  public Graphics2D graphics() {
    return g;
  }

  /** Where words are tied to their point. */
  public enum Align {
    START,
    MIDDLE,
    END
  }

  public Font fine() {
    return style.fonts().regular(PlotFonts.FINE);
  }

  public Font fineStrong() {
    return style.fonts().strong(PlotFonts.FINE);
  }

  Font bodyStrong() {
    return style.fonts().strong(PlotFonts.BODY);
  }

  static double width(String text, Font font) {
    return font.getStringBounds(text, METRICS).getWidth();
  }

  /**
   * A text in lines between words.
   *
   * @param most width of a line; a word that is wider has a line of its own
   * @return at least one line
   */
  static List<String> lines(String text, Font font, double most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, font) > most) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  public void words(String text, double x, double y, Font font, PlotToken colour) {
    words(text, x, y, font, colour, Align.START);
  }

  public void words(String text, double x, double y, Font font, PlotToken colour, Align align) {
    if (text.isEmpty()) {
      return;
    }
    double shift =
        switch (align) {
          case START -> 0;
          case MIDDLE -> width(text, font) / 2;
          case END -> width(text, font);
        };
    g.setFont(font);
    g.setPaint(style.palette().colour(colour));
    g.drawString(text, (float) (x - shift), (float) y);
  }

  public void rule(double x1, double y1, double x2, double y2, PlotToken colour, double width) {
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    g.setPaint(style.palette().colour(colour));
    g.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  public void stroke(Shape shape, PlotToken colour, BasicStroke stroke) {
    g.setStroke(stroke);
    g.setPaint(style.palette().colour(colour));
    g.draw(shape);
  }

  public void fill(Shape shape, PlotToken colour) {
    g.setPaint(style.palette().colour(colour));
    g.fill(shape);
  }

  public void wash(Shape shape, PlotToken colour, double alpha) {
    g.setPaint(style.palette().wash(colour, alpha));
    g.fill(shape);
  }

  /** A marker, hollow markers filled with the sheet so that a line does not run through them. */
  void marker(PlotLook look, double x, double y) {
    if (look.marker() == PlotMarker.NONE) {
      return;
    }
    Shape shape = look.marker().at(x, y);
    BasicStroke thin = new BasicStroke((float) Math.min(look.width(), 2));
    if (look.marker() == PlotMarker.DOT) {
      fill(shape, look.colour());
      stroke(shape, PlotToken.SHEET, new BasicStroke(1.2f));
    } else {
      if (look.marker() != PlotMarker.CROSS) {
        fill(shape, PlotToken.SHEET);
      }
      stroke(shape, look.colour(), thin);
    }
  }
}
