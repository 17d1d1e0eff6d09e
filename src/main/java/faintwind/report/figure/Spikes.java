package faintwind.report.figure;

import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotPoints;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One or two rows that stand far from all about them: a knock or a lost bit, nothing that a ball
 * can do. They would stretch an axis until nothing else is seen, so they leave the plot and are
 * told beside it.
 *
 * @param count how many points
 * @param low least value of the rest
 * @param high greatest value of the rest
 */
record Spikes(int count, double low, double high) {
  private static final int REACH = 2;
  private static final double FAR = 0.2;
  private static final double NOISE = 15;
  private static final double MARGIN = 0.05;

  /** Those of a line that is drawn in pieces. */
  static Spikes of(List<PlotPoints> pieces) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (PlotPoints piece : pieces) {
      for (int i = 0; i < piece.size(); i++) {
        double about = about(piece, i);
        low = Math.min(low, about);
        high = Math.max(high, about);
      }
    }
    double far = Math.max(FAR * (high - low), NOISE * usual(pieces));
    int count = 0;
    double least = low;
    double most = high;
    for (PlotPoints piece : pieces) {
      for (int i = 0; i < piece.size(); i++) {
        boolean spike = Math.abs(piece.y(i) - about(piece, i)) > far;
        count += spike ? 1 : 0;
        least = spike ? least : Math.min(least, piece.y(i));
        most = spike ? most : Math.max(most, piece.y(i));
      }
    }
    return new Spikes(far > 0 ? count : 0, least, most);
  }

  /** Median distance of a point from those about it. */
  private static double usual(List<PlotPoints> pieces) {
    double[] off =
        pieces.stream()
            .flatMapToDouble(
                piece ->
                    IntStream.range(0, piece.size())
                        .mapToDouble(i -> Math.abs(piece.y(i) - about(piece, i))))
            .sorted()
            .toArray();
    return off.length == 0 ? 0 : off[off.length / 2];
  }

  /** Median of a point and the two on either side; itself where there are none. */
  private static double about(PlotPoints piece, int at) {
    if (at < REACH || at >= piece.size() - REACH) {
      return piece.y(at);
    }
    double[] near = new double[2 * REACH + 1];
    for (int i = 0; i < near.length; i++) {
      near[i] = piece.y(at - REACH + i);
    }
    Arrays.sort(near);
    return near[REACH];
  }

  boolean any() {
    return count > 0;
  }

  /** An axis on which the rest has its scale. */
  PlotAxis without(PlotAxis axis) {
    double margin = MARGIN * (high - low);
    return any() ? axis.between(low - margin, high + margin) : axis;
  }
}
