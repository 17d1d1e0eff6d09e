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
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The arm from above, to scale: bar, pair, counterweight, the circle of the pair and the one that
 * nobody enters, with the dimensions of the builder's own arm.
 *
 * @param arm the dimensions
 * @param title accessible name
 * @param description what the drawing shows
 */
public record ArmDrawing(Arm arm, String title, String description) implements Picture {
  private static final double MARGIN = 26;
  private static final double FOOT = 18;

  /**
   * Dimensions in millimetres.
   *
   * @param radius_mm from the axis to the heated ball
   * @param counter_mm from the axis to the counterweight
   * @param clear_mm radius of the floor that stays clear
   */
  public record Arm(double radius_mm, double counter_mm, double clear_mm) {
    public Arm {
      if (!(counter_mm > 0 && radius_mm > counter_mm && clear_mm > radius_mm)) {
        throw new IllegalArgumentException(
            "arm " + radius_mm + " mm, weight " + counter_mm + " mm, circle " + clear_mm + " mm");
      }
    }
  }

  /** The drawing of an arm, described in words. */
  public static ArmDrawing of(Arm arm, Messages messages) {
    return new ArmDrawing(
        arm,
        messages.text("plot.arm"),
        messages.text(
            "plot.arm.description",
            PlotSummary.number(arm.radius_mm(), messages.locale()),
            PlotSummary.number(arm.counter_mm(), messages.locale()),
            PlotSummary.number(arm.clear_mm(), messages.locale())));
  }

  @Override
  public void draw(Graphics2D g, PictureSize size, PictureStyle style) {
    double room = Math.min(size.width() - 2 * MARGIN, size.height() - 2 * MARGIN - FOOT);
    new FromAbove(
            new PlotPen(g, style),
            arm,
            Math.max(20, room) / (2 * arm.clear_mm()),
            size.width() / 2.0,
            MARGIN + Math.max(20, room) / 2)
        .draw();
  }

  /** One arm at one scale and place. */
  private record FromAbove(PlotPen pen, Arm arm, double scale, double cx, double cy) {
    void draw() {
      double r = scale * arm.radius_mm();
      double clear = scale * arm.clear_mm();
      pen.stroke(circle(cx, cy, clear), PlotToken.STOP, dashed());
      pen.stroke(circle(cx, cy, r), PlotToken.EDGE, dashed());
      pen.stroke(new Line2D.Double(cx - r, cy, cx + r, cy), PlotToken.INK, line(3));
      pen.fill(circle(cx, cy, 7), PlotToken.SHEET);
      pen.stroke(circle(cx, cy, 7), PlotToken.INK, line(1.75));
      pen.fill(circle(cx + r, cy, 6), PlotToken.HEATED);
      pen.fill(circle(cx + r - 14, cy, 6), PlotToken.REFERENCE);
      double weight = cx - scale * arm.counter_mm();
      pen.fill(new Rectangle2D.Double(weight - 7, cy - 10, 14, 20), PlotToken.INK);
      across(cx, cx + r, cy - 22, arm.radius_mm());
      across(weight, cx, cy + 26, arm.counter_mm());
      across(cx - clear, cx, cy + clear + 12, arm.clear_mm());
    }

    private void across(double left, double right, double y, double value_mm) {
      pen.rule(left, y, right, y, PlotToken.INK, 1);
      head(left, y, 1);
      head(right, y, -1);
      pen.words(
          PlotTicks.number(value_mm, 0, false, pen.style().locale()) + " mm",
          (left + right) / 2,
          y - 5,
          pen.fine(),
          PlotToken.INK,
          PlotPen.Align.MIDDLE);
    }

    private void head(double x, double y, int way) {
      Path2D path = new Path2D.Double();
      path.moveTo(x, y);
      path.lineTo(x + way * 8, y - 2.5);
      path.lineTo(x + way * 8, y + 2.5);
      path.closePath();
      pen.fill(path, PlotToken.INK);
    }

    private static Ellipse2D circle(double x, double y, double r) {
      return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }

    private static BasicStroke line(double width) {
      return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed() {
      return new BasicStroke(
          1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {5, 5}, 0);
    }
  }
}
