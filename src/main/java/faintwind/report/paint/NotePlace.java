package faintwind.report.paint;

import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotPoints;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Finds the place of a note: where it was asked for, or else a corner that no line crosses. */
final class NotePlace {
  private static final double AIR = 2;

  private final PlotPlace x;
  private final PlotPlace y;
  private final PlotBox box;

  NotePlace(PlotPlace x, PlotPlace y, PlotBox box) {
    this.x = x;
    this.y = y;
    this.box = box;
  }

  /**
   * The place of the words.
   *
   * @param wanted where they were asked for
   * @param lines what must not cross them
   */
  Rectangle2D of(Rectangle2D wanted, List<PlotLine> lines) {
    double right = box.right() - wanted.getWidth();
    double bottom = box.bottom() - wanted.getHeight() - AIR;
    double inside = Math.min(wanted.getX(), right);
    List<Rectangle2D> places =
        List.of(
            at(wanted, inside, Math.max(box.y(), Math.min(wanted.getY(), bottom))),
            at(wanted, right, bottom),
            at(wanted, box.x() + AIR, box.y()),
            at(wanted, right, box.y()),
            at(wanted, box.x() + AIR, bottom));
    return places.stream()
        .filter(place -> lines.stream().noneMatch(line -> crosses(line, place)))
        .findFirst()
        .orElse(places.get(0));
  }

  private static Rectangle2D at(Rectangle2D size, double left, double top) {
    return new Rectangle2D.Double(left, top, size.getWidth(), size.getHeight());
  }

  private boolean crosses(PlotLine line, Rectangle2D place) {
    Rectangle2D around =
        new Rectangle2D.Double(
            place.getX() - AIR,
            place.getY() - AIR,
            place.getWidth() + 2 * AIR,
            place.getHeight() + 2 * AIR);
    for (PlotPoints piece : line.pieces()) {
      for (int i = 0; i < piece.size(); i++) {
        int before = line.look().isLine() ? Math.max(0, i - 1) : i;
        if (around.intersectsLine(
            x.of(piece.x(before)), y.of(piece.y(before)), x.of(piece.x(i)), y.of(piece.y(i)))) {
          return true;
        }
      }
    }
    return false;
  }
}
