package faintwind.report.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * The numbers of one panel, for those who read rather than look.
 *
 * @param title the panel's title
 * @param columns names of the columns
 * @param x what the numbers along the first axis are
 * @param rows one row a point or stretch
 */
public record PlotTable(String title, List<String> columns, PlotAxis.Scale x, List<Row> rows) {
  public PlotTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param series label of the line or name of the lane
   * @param numbers x, y and, where there is a band, its lower and upper edge; for a lane from, to
   * @param places how many of the numbers lie along the first axis: 1 of a point, 2 of a stretch
   */
  public record Row(String series, List<Double> numbers, int places) {
    public Row {
      numbers = List.copyOf(numbers);
    }
  }

  public static PlotTable of(PlotPanel panel) {
    List<Row> rows = new ArrayList<>();
    for (PlotLine line : panel.content().lines()) {
      line.pieces().forEach(piece -> addPoints(rows, line.label(), piece));
    }
    for (PlotLane lane : panel.content().lanes()) {
      lane.stretches().forEach(s -> rows.add(new Row(lane.name(), List.of(s.from(), s.to()), 2)));
    }
    List<String> names = List.of(panel.x().name(), panel.y().name());
    return new PlotTable(panel.title(), names, panel.x().scale(), rows);
  }

  private static void addPoints(List<Row> rows, String label, PlotPoints piece) {
    for (int i = 0; i < piece.size(); i++) {
      rows.add(
          new Row(
              label,
              piece.hasBand()
                  ? List.of(piece.x(i), piece.y(i), piece.low(i), piece.high(i))
                  : List.of(piece.x(i), piece.y(i)),
              1));
    }
  }
}
