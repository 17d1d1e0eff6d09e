package faintwind.report.paint;

import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotLine;
import java.util.ArrayList;
import java.util.List;

/**
 * What the markers of a panel stand for: each marker before its name, at the right over the axes,
 * in as many rows as the width asks for.
 */
final class KeyRows {
  private static final double ROW = 20;

  /** From a marker's middle to its name. */
  private static final double BESIDE = 12;

  /** From a marker's left edge to its name. */
  private static final double MARKER = 18;

  /** From the end of a name to the next marker's left edge. */
  private static final double GAP = 18;

  private final PlotPen pen;
  private final List<List<PlotLine>> rows = new ArrayList<>();

  /**
   * Shares out names among rows.
   *
   * @param within the width there is
   */
  KeyRows(PlotPen pen, List<PlotLine> keys, double within) {
    this.pen = pen;
    double used = 0;
    for (PlotLine key : keys) {
      double wide = MARKER + PlotPen.width(key.label(), pen.fine());
      if (rows.isEmpty() || used + GAP + wide > within) {
        rows.add(new ArrayList<>());
        used = wide;
      } else {
        used += GAP + wide;
      }
      rows.get(rows.size() - 1).add(key);
    }
  }

  /** Names as they stand, row by row. */
  List<List<String>> names() {
    return rows.stream().map(row -> row.stream().map(PlotLine::label).toList()).toList();
  }

  double height() {
    return ROW * rows.size();
  }

  /**
   * Draws them.
   *
   * @param right where each row ends
   * @param bottom what is below the last row
   */
  void draw(double right, double bottom) {
    double y = bottom - height() + ROW - 9;
    for (List<PlotLine> row : rows) {
      double x = right;
      for (int i = row.size() - 1; i >= 0; i--) {
        PlotLine key = row.get(i);
        x -= PlotPen.width(key.label(), pen.fine());
        pen.words(key.label(), x, y, pen.fine(), PlotToken.INK);
        pen.marker(key.look(), x - BESIDE, y - 4.5);
        x -= MARKER + GAP;
      }
      y += ROW;
    }
  }
}
