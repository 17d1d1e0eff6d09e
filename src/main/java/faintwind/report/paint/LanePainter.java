package faintwind.report.paint;

import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotLane;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Draws lanes of stretches, each with a texture of its own. */
final class LanePainter {
  private final PlotPen pen;
  private final PlotPlace x;
  private final PlotBox box;

  LanePainter(PlotPen pen, PlotPlace x, PlotBox box) {
    this.pen = pen;
    this.x = x;
    this.box = box;
  }

  void draw(List<PlotLane> lanes) {
    double row = box.height() / lanes.size();
    pen.rule(box.x(), box.y() + 0.5, box.right(), box.y() + 0.5, PlotToken.EDGE, 1);
    for (int i = 0; i < lanes.size(); i++) {
      double middle = box.y() + row * (i + 0.5);
      drawLane(lanes.get(i), middle);
      double under = Math.round(box.y() + row * (i + 1)) + 0.5;
      pen.rule(box.x(), under, box.right(), under, PlotToken.RULE, 1);
    }
  }

  private void drawLane(PlotLane lane, double y) {
    pen.words(
        lane.name(), box.x() - 12, y + 4.5, pen.fineStrong(), PlotToken.INK, PlotPen.Align.END);
    for (PlotLane.Stretch stretch : lane.stretches()) {
      double left = x.of(x.clamp(stretch.from()));
      double right = Math.max(left + 1.2, x.of(x.clamp(stretch.to())));
      drawStretch(lane.texture(), left, right, y);
    }
    if (!lane.stretches().isEmpty() && !lane.note().isEmpty()) {
      drawNote(lane, y);
    }
  }

  /** Beside the last stretch, or before the first where there is no room. */
  private void drawNote(PlotLane lane, double y) {
    double width = PlotPen.width(lane.note(), pen.fine());
    PlotLane.Stretch last = lane.stretches().get(lane.stretches().size() - 1);
    double after = x.of(x.clamp(last.to())) + 12;
    double before = x.of(x.clamp(lane.stretches().get(0).from())) - 12 - width;
    if (after + width <= box.right()) {
      pen.words(lane.note(), after, y + 4.5, pen.fine(), PlotToken.INK_SOFT);
    } else if (before >= box.x()) {
      pen.words(lane.note(), before, y + 4.5, pen.fine(), PlotToken.INK_SOFT);
    }
  }

  private void drawStretch(PlotLane.Texture texture, double left, double right, double y) {
    switch (texture) {
      case SOLID ->
          pen.fill(new Rectangle2D.Double(left, y - 3, right - left, 6), PlotToken.SERIES_1);
      case HOLLOW ->
          pen.stroke(
              new RoundRectangle2D.Double(left, y - 3, right - left, 6, 6, 6),
              PlotToken.EDGE,
              new BasicStroke(1.5f));
      case WAVE -> pen.stroke(wave(left, right, y), PlotToken.HEATED, round(2.2f));
      case POSTS -> pen.stroke(posts(left, right, y), PlotToken.INK, round(2f));
      case KINK -> pen.stroke(kink(left, right, y), PlotToken.CARE, round(2.4f));
      case SLANTS -> pen.stroke(slants(left, right, y), PlotToken.STOP, round(2f));
    }
  }

  private static BasicStroke round(float width) {
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  private static Shape wave(double left, double right, double y) {
    Path2D path = new Path2D.Double();
    path.moveTo(left, y);
    int periods = (int) Math.max(1, Math.floor((right - left) / 12));
    for (int i = 0; i < periods; i++) {
      double at = left + 12 * i;
      path.quadTo(at + 3, y - 9, at + 6, y);
      path.quadTo(at + 9, y + 9, at + 12, y);
    }
    return path;
  }

  private static Shape posts(double left, double right, double y) {
    Path2D path = new Path2D.Double();
    path.moveTo(left, y - 7);
    path.lineTo(left, y + 7);
    path.moveTo(right, y - 7);
    path.lineTo(right, y + 7);
    return path;
  }

  private static Shape kink(double left, double right, double y) {
    double width = Math.max(10, right - left);
    Path2D path = new Path2D.Double();
    path.moveTo(left, y + 5);
    path.lineTo(left + 0.35 * width, y + 5);
    path.lineTo(left + 0.5 * width, y - 6);
    path.lineTo(left + 0.65 * width, y + 5);
    path.lineTo(left + width, y + 5);
    return path;
  }

  private static Shape slants(double left, double right, double y) {
    Path2D path = new Path2D.Double();
    for (double at = left; at <= Math.max(left, right - 5); at += 7) {
      path.moveTo(at, y + 5);
      path.lineTo(at + 5, y - 5);
    }
    return path;
  }
}
