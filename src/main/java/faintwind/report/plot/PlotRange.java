package faintwind.report.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Ends of an axis from what is drawn.
 *
 * @param low lower end
 * @param high upper end, above {@code low}
 */
public record PlotRange(double low, double high) {

  public static PlotRange ofX(PlotPanel panel) {
    List<Double> values = new ArrayList<>();
    boolean markers = false;
    for (PlotLine line : panel.content().lines()) {
      for (PlotPoints piece : line.pieces()) {
        for (int i = 0; i < piece.size(); i++) {
          values.add(piece.x(i));
        }
      }
      markers |= line.look().marker() != PlotMarker.NONE;
    }
    panel.content().lanes().stream()
        .flatMap(lane -> lane.stretches().stream())
        .forEach(s -> values.addAll(List.of(s.from(), s.to())));
    return ends(panel.x(), values, markers ? 0.02 : 0);
  }

  public static PlotRange ofY(PlotPanel panel) {
    List<Double> values = new ArrayList<>();
    for (PlotLine line : panel.content().lines()) {
      for (PlotPoints piece : line.pieces()) {
        for (int i = 0; i < piece.size(); i++) {
          values.add(piece.y(i));
          values.add(piece.low(i));
          values.add(piece.high(i));
        }
      }
    }
    PlotRange range = ends(panel.y(), values, 0.06);
    boolean labelled = panel.content().spans().stream().anyMatch(s -> !s.label().isEmpty());
    // labels of spans stand at the top, over the lines
    return labelled && panel.y().high().isEmpty()
        ? new PlotRange(range.low(), range.high() + 0.12 * (range.high() - range.low()))
        : range;
  }

  private static PlotRange ends(PlotAxis axis, List<Double> values, double pad) {
    boolean log = axis.scale() == PlotAxis.Scale.LOGARITHMIC;
    double min = values.stream().mapToDouble(v -> v).filter(v -> !log || v > 0).min().orElse(1);
    double max = values.stream().mapToDouble(v -> v).max().orElse(2);
    double room = log ? 0 : pad * (max - min);
    double low = axis.low().orElse(min - room);
    double high = axis.high().orElse(max + room);
    if (high > low) {
      return new PlotRange(low, high);
    }
    // one value only: give it room of its own size, so that it stands in the middle
    double size = Math.max(Math.abs(low) * 0.1, 1e-9);
    return new PlotRange(axis.low().orElse(low - size), low + size);
  }
}
