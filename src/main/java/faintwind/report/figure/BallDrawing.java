package faintwind.report.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotPen;
import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotSummary;
import faintwind.report.plot.PlotTicks;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Section through a ball and its bore with the dimensions a builder needs at the drill: metal
 * hatched at 45°, bore from below with the drill's point, heater in it.
 *
 * @param ball the dimensions
 * @param title accessible name
 * @param description what the drawing shows
 */
public record BallDrawing(Ball ball, String title, String description) implements Picture {
  private static final double SIDE = 92;
  private static final double ABOVE = 46;
  private static final double BELOW = 52;
  private static final double HATCH = 9;

  /**
   * Dimensions in millimetres.
   *
   * @param diameter_mm of the ball
   * @param bore_mm diameter of the bore
   * @param depth_mm depth of the bore from the ball's surface to its shoulder
   * @param bodyDiameter_mm of the resistor; 0 for the reference ball
   * @param bodyLength_mm of the resistor
   */
  public record Ball(
      double diameter_mm,
      double bore_mm,
      double depth_mm,
      double bodyDiameter_mm,
      double bodyLength_mm) {
    public Ball {
      if (!(diameter_mm > 0 && bore_mm > 0 && bore_mm < diameter_mm && depth_mm > 0)) {
        throw new IllegalArgumentException(
            "ball " + diameter_mm + " mm, bore " + bore_mm + " mm, depth " + depth_mm + " mm");
      }
    }

    boolean isHeated() {
      return bodyDiameter_mm > 0;
    }
  }

  /** The drawing of a ball, described in words. */
  public static BallDrawing of(Ball ball, Messages messages) {
    String key = ball.isHeated() ? "plot.ball.heated" : "plot.ball.reference";
    return new BallDrawing(
        ball,
        messages.text(key),
        messages.text(
            "plot.ball.description",
            PlotSummary.number(ball.diameter_mm(), messages.locale()),
            PlotSummary.number(ball.bore_mm(), messages.locale()),
            PlotSummary.number(ball.depth_mm(), messages.locale())));
  }

  @Override
  public void draw(Graphics2D g, PictureSize size, PictureStyle style) {
    PlotPen pen = new PlotPen(g, style);
    double room = Math.min(size.width() - 2 * SIDE, size.height() - ABOVE - BELOW);
    double scale = Math.max(10, room) / ball.diameter_mm();
    new Section(pen, ball, scale, size.width() / 2.0, ABOVE + scale * ball.diameter_mm() / 2)
        .draw();
  }

  /** One ball at one scale and place. */
  private record Section(PlotPen pen, Ball ball, double scale, double cx, double cy) {
    void draw() {
      double r = scale * ball.diameter_mm() / 2;
      Area metal = new Area(new Ellipse2D.Double(cx - r, cy - r, 2 * r, 2 * r));
      metal.subtract(new Area(bore(r)));
      hatch(metal, r);
      pen.stroke(metal, PlotToken.INK, line(2));
      if (ball.isHeated()) {
        drawHeater(r);
      }
      dimensions(r);
    }

    /** From below the ball up to the shoulder, then the point of a 118° drill. */
    private Shape bore(double r) {
      double half = scale * ball.bore_mm() / 2;
      double top = cy + r - scale * Math.min(ball.depth_mm(), ball.diameter_mm());
      Path2D path = new Path2D.Double();
      path.moveTo(cx - half, cy + r + 2);
      path.lineTo(cx - half, top);
      path.lineTo(cx, top - half / Math.tan(Math.toRadians(59)));
      path.lineTo(cx + half, top);
      path.lineTo(cx + half, cy + r + 2);
      path.closePath();
      return path;
    }

    private void hatch(Area metal, double r) {
      PlotToken colour = ball.isHeated() ? PlotToken.HEATED : PlotToken.REFERENCE;
      Shape before = pen.graphics().getClip();
      pen.graphics().clip(metal);
      for (double d = -2 * r; d < 2 * r; d += HATCH) {
        Line2D stroke = new Line2D.Double(cx + d - r, cy + r, cx + d + r, cy - r);
        pen.stroke(stroke, colour, line(1.2));
      }
      pen.graphics().setClip(before);
    }

    private void drawHeater(double r) {
      double width = scale * ball.bodyDiameter_mm();
      double length = scale * ball.bodyLength_mm();
      double shoulder = cy + r - scale * Math.min(ball.depth_mm(), ball.diameter_mm()) + 3;
      // in the middle of the ball, as far as the bore lets it
      double top = Math.max(shoulder, cy - length / 2);
      Shape body = new RoundRectangle2D.Double(cx - width / 2, top, width, length, 6, 6);
      pen.fill(body, PlotToken.SHEET);
      pen.stroke(body, PlotToken.INK, line(1.75));
      for (int i = 1; i <= 3; i++) {
        double y = top + length * i / 4;
        pen.rule(cx - width / 2 + 2, y, cx + width / 2 - 2, y, PlotToken.HEATED, 2.2);
      }
      double end = cy + r + 16;
      pen.rule(cx - width / 4, top + length, cx - width / 4, end, PlotToken.INK, 1.75);
      pen.rule(cx + width / 4, top + length, cx + width / 4, end, PlotToken.INK, 1.75);
    }

    private void dimensions(double r) {
      double half = scale * ball.bore_mm() / 2;
      double shoulder = cy + r - scale * Math.min(ball.depth_mm(), ball.diameter_mm());
      across(cx - r, cx + r, cy - r - 16, ball.diameter_mm());
      across(cx - half, cx + half, cy + r + 28, ball.bore_mm());
      down(cx + r + 18, shoulder, cy + r, ball.depth_mm());
    }

    private void across(double left, double right, double y, double value_mm) {
      arrow(left, y, right, y);
      pen.words(
          words(value_mm),
          (left + right) / 2,
          y - 6 + (y > cy ? 24 : 0),
          pen.fine(),
          PlotToken.INK,
          PlotPen.Align.MIDDLE);
      tick(left, y - 5, left, y + 5);
      tick(right, y - 5, right, y + 5);
    }

    private void down(double x, double top, double bottom, double value_mm) {
      arrow(x, top, x, bottom);
      pen.words(words(value_mm), x + 8, (top + bottom) / 2 + 4.5, pen.fine(), PlotToken.INK);
      tick(x - 5, top, x + 5, top);
      tick(x - 5, bottom, x + 5, bottom);
    }

    private void arrow(double x1, double y1, double x2, double y2) {
      pen.rule(x1, y1, x2, y2, PlotToken.INK, 1);
      head(x1, y1, Math.atan2(y2 - y1, x2 - x1));
      head(x2, y2, Math.atan2(y1 - y2, x1 - x2));
    }

    private void head(double x, double y, double angle) {
      Path2D path = new Path2D.Double();
      path.moveTo(x, y);
      path.lineTo(x + 8 * Math.cos(angle + 0.3), y + 8 * Math.sin(angle + 0.3));
      path.lineTo(x + 8 * Math.cos(angle - 0.3), y + 8 * Math.sin(angle - 0.3));
      path.closePath();
      pen.fill(path, PlotToken.INK);
    }

    private void tick(double x1, double y1, double x2, double y2) {
      pen.rule(x1, y1, x2, y2, PlotToken.INK, 1);
    }

    private String words(double value_mm) {
      return PlotTicks.number(value_mm, 2, false, pen.style().locale()) + " mm";
    }

    private static BasicStroke line(double width) {
      return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
  }
}
