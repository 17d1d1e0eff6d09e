package faintwind.report.paint;

import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSpan;
import faintwind.report.plot.PlotStripe;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws areas, bands, lines, markers and notes between two axes. */
final class LinePainter {
  private static final double BAND = 0.20;
  static final double LABEL_ROW = 17;

  /** Height of a row's letters over its base line. */
  private static final double NOTE_RISE = 12;

  private final PlotPen pen;
  private final PlotPlace x;
  private final PlotPlace y;
  private final PlotBox box;

  LinePainter(PlotPen pen, PlotPlace x, PlotPlace y, PlotBox box) {
    this.pen = pen;
    this.x = x;
    this.y = y;
    this.box = box;
  }

  void drawUnder(PlotContent content) {
    for (PlotStripe stripe : content.stripes()) {
      double top = y.of(y.clamp(stripe.to()));
      double bottom = y.of(y.clamp(stripe.from()));
      pen.fill(
          new Rectangle2D.Double(box.x(), top, box.width(), Math.max(0, bottom - top)),
          stripe.fill());
    }
    for (PlotSpan span : content.spans()) {
      double left = x.of(x.clamp(span.from()));
      double right = x.of(x.clamp(span.to()));
      pen.fill(
          new Rectangle2D.Double(left, box.y(), Math.max(0, right - left), box.height()),
          span.fill());
    }
  }

  /**
   * Draws the lines.
   *
   * @param labelled whether their labels stand at their ends
   */
  void drawLines(PlotContent content, boolean labelled) {
    Shape before = pen.graphics().getClip();
    boolean clipped = leavesBox(content);
    if (clipped) {
      pen.graphics().clip(box.shape());
    }
    for (PlotLine line : content.lines()) {
      line.pieces().stream().filter(PlotPoints::hasBand).forEach(p -> drawBand(p, line.look()));
    }
    content.lines().stream().filter(l -> l.look().isLine()).forEach(this::drawStrokes);
    if (clipped) {
      pen.graphics().setClip(before);
    }
    content.lines().forEach(this::drawMarkers);
    if (labelled) {
      drawLabels(content.lines());
    }
    content.spans().forEach(this::drawSpanLabel);
    content.notes().forEach(note -> drawNote(note, content.lines()));
  }

  /** A clip costs a definition in the SVG, so it is set only where something would stick out. */
  private boolean leavesBox(PlotContent content) {
    for (PlotLine line : content.lines()) {
      for (PlotPoints piece : line.pieces()) {
        for (int i = 0; i < piece.size(); i++) {
          if (!x.holds(piece.x(i)) || !y.holds(piece.low(i)) || !y.holds(piece.high(i))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private void drawBand(PlotPoints given, PlotLook look) {
    PlotPoints points = PlotDecimation.toColumns(given, x);
    Path2D area = new Path2D.Double();
    area.moveTo(x.of(points.x(0)), y.of(points.high(0)));
    for (int i = 1; i < points.size(); i++) {
      area.lineTo(x.of(points.x(i)), y.of(points.high(i)));
    }
    for (int i = points.size() - 1; i >= 0; i--) {
      area.lineTo(x.of(points.x(i)), y.of(points.low(i)));
    }
    area.closePath();
    pen.wash(area, look.colour(), BAND);
  }

  private void drawStrokes(PlotLine line) {
    Path2D path = new Path2D.Double();
    for (PlotPoints given : line.pieces()) {
      PlotPoints points = PlotDecimation.toColumns(given, x);
      path.moveTo(x.of(points.x(0)), y.of(points.y(0)));
      for (int i = 1; i < points.size(); i++) {
        path.lineTo(x.of(points.x(i)), y.of(points.y(i)));
      }
    }
    if (!line.pieces().isEmpty()) {
      pen.stroke(path, line.look().colour(), line.look().dash().stroke(line.look().width()));
    }
  }

  private void drawMarkers(PlotLine line) {
    if (line.look().marker() == PlotMarker.NONE) {
      return;
    }
    for (PlotPoints points : line.pieces()) {
      for (int i = 0; i < points.size(); i++) {
        // a reading beyond the axis stands at its edge: it must not vanish
        pen.marker(line.look(), x.of(x.clamp(points.x(i))), y.of(y.clamp(points.y(i))));
      }
    }
  }

  /** Width of the piece of line that stands before a label where there are several. */
  static final double SAMPLE = 16;

  /**
   * A label waiting for its place.
   *
   * @param line whose it is
   * @param wanted the height of the line's end
   */
  private record EndLabel(PlotLine line, double wanted) {}

  private void drawLabels(List<PlotLine> lines) {
    List<EndLabel> labels = new ArrayList<>();
    for (PlotLine line : lines) {
      if (line.look().isLine() && !line.label().isEmpty() && !line.pieces().isEmpty()) {
        PlotPoints last = line.pieces().get(line.pieces().size() - 1);
        labels.add(new EndLabel(line, y.of(y.clamp(last.y(last.size() - 1))) + 4.5));
      }
    }
    labels.sort(Comparator.comparingDouble(EndLabel::wanted));
    double[] at = spread(labels);
    for (int i = 0; i < at.length; i++) {
      drawLabel(pen, labels.get(i).line(), box.right() + 8, at[i], at.length > 1);
    }
  }

  /** A label, behind a sample of its line where there are several. */
  static void drawLabel(PlotPen pen, PlotLine line, double x, double y, boolean sampled) {
    if (sampled) {
      Shape piece = new Line2D.Double(x + 1, y - 4.5, x + SAMPLE - 4, y - 4.5);
      pen.stroke(piece, line.look().colour(), line.look().dash().stroke(line.look().width()));
    }
    pen.words(line.label(), x + (sampled ? SAMPLE : 0), y, pen.fineStrong(), PlotToken.INK);
  }

  /** Pushes labels down until none overlaps, then back up where they fell out of the box. */
  private double[] spread(List<EndLabel> labels) {
    double[] at = labels.stream().mapToDouble(EndLabel::wanted).toArray();
    for (int i = 1; i < at.length; i++) {
      at[i] = Math.max(at[i], at[i - 1] + LABEL_ROW);
    }
    double limit = box.bottom() + 4.5;
    for (int i = at.length - 1; i >= 0; i--) {
      at[i] = Math.min(at[i], limit);
      limit = at[i] - LABEL_ROW;
    }
    return at;
  }

  private void drawSpanLabel(PlotSpan span) {
    double middle = (x.of(x.clamp(span.from())) + x.of(x.clamp(span.to()))) / 2;
    pen.words(
        span.label(), middle, box.y() + 16, pen.fine(), PlotToken.INK_SOFT, PlotPen.Align.MIDDLE);
  }

  private void drawNote(PlotNote note, List<PlotLine> lines) {
    double widest =
        note.lines().stream().mapToDouble(t -> PlotPen.width(t, pen.fineStrong())).max().orElse(0);
    Rectangle2D wanted =
        new Rectangle2D.Double(
            x.of(x.clamp(note.x())),
            y.of(y.clamp(note.y())) - NOTE_RISE,
            widest,
            note.lines().size() * LABEL_ROW);
    Rectangle2D place = new NotePlace(x, y, box).of(wanted, lines);
    double left = place.getX();
    double top = place.getY() + NOTE_RISE;
    for (int i = 0; i < note.lines().size(); i++) {
      boolean strong = i == 0 && note.lines().size() > 1;
      pen.words(
          note.lines().get(i),
          left,
          top + i * LABEL_ROW,
          strong ? pen.fineStrong() : pen.fine(),
          strong ? note.colour() : PlotToken.INK_SOFT);
    }
  }
}
