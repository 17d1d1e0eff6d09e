package faintwind.report.paint;

import faintwind.report.plot.PlotPoints;
import java.util.Arrays;

/**
 * Fewer points for the same picture: of all points that fall into one pixel column the first, the
 * lowest, the highest and the last are kept, so that no extreme is lost.
 */
final class PlotDecimation {
  private PlotDecimation() {}

  /**
   * At most four points a column.
   *
   * @param x place of the numbers along x; its pixels are the columns
   */
  static PlotPoints toColumns(PlotPoints points, PlotPlace x) {
    double columns = Math.abs(x.end() - x.start());
    if (points.size() <= 4 * columns) {
      return points;
    }
    int[] keep = new int[points.size()];
    int kept = 0;
    int from = 0;
    while (from < points.size()) {
      long column = Math.round(x.of(points.x(from)));
      int to = from + 1;
      while (to < points.size() && Math.round(x.of(points.x(to))) == column) {
        to++;
      }
      kept = column(points, from, to, keep, kept);
      from = to;
    }
    return pick(points, Arrays.copyOf(keep, kept));
  }

  private static int column(PlotPoints points, int from, int to, int[] keep, int kept) {
    int low = from;
    int high = from;
    int bandLow = from;
    int bandHigh = from;
    for (int i = from; i < to; i++) {
      low = points.y(i) < points.y(low) ? i : low;
      high = points.y(i) > points.y(high) ? i : high;
      bandLow = points.low(i) < points.low(bandLow) ? i : bandLow;
      bandHigh = points.high(i) > points.high(bandHigh) ? i : bandHigh;
    }
    int[] chosen =
        Arrays.stream(new int[] {from, low, high, bandLow, bandHigh, to - 1})
            .sorted()
            .distinct()
            .toArray();
    System.arraycopy(chosen, 0, keep, kept, chosen.length);
    return kept + chosen.length;
  }

  private static PlotPoints pick(PlotPoints points, int[] keep) {
    double[] x = Arrays.stream(keep).mapToDouble(points::x).toArray();
    double[] y = Arrays.stream(keep).mapToDouble(points::y).toArray();
    if (!points.hasBand()) {
      return PlotPoints.of(x, y);
    }
    return PlotPoints.withBand(
        x,
        y,
        Arrays.stream(keep).mapToDouble(points::low).toArray(),
        Arrays.stream(keep).mapToDouble(points::high).toArray());
  }
}
