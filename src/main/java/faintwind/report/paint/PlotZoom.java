package faintwind.report.paint;

import faintwind.message.Messages;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotRange;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A stretch of a plot, seen closer: all panels from one x to another, each as high as what is seen
 * of it asks for. Immutable.
 */
public final class PlotZoom {
  private static final double CLOSEST = 1e-3;
  private static final double BEYOND = 0.02;

  private final PlotFigure whole;
  private final double from;
  private final double to;

  private PlotZoom(PlotFigure whole, double from, double to) {
    this.whole = whole;
    this.from = from;
    this.to = to;
  }

  /** All of a plot. */
  public static PlotZoom all(PlotFigure whole) {
    PlotRange range = PlotRange.ofX(whole.panels().get(0));
    return new PlotZoom(whole, range.low(), range.high());
  }

  private PlotZoom all() {
    return all(whole);
  }

  /** Whether everything is seen. */
  public boolean isAll() {
    return from == all().from && to == all().to;
  }

  private boolean decades() {
    return whole.panels().get(0).x().scale() == PlotAxis.Scale.LOGARITHMIC;
  }

  private double out(double x) {
    return decades() ? Math.log(x) : x;
  }

  private double back(double place) {
    return decades() ? Math.exp(place) : place;
  }

  /** The x at a share of the width, 0 to 1. */
  public double at(double share) {
    return back(out(from) + share * (out(to) - out(from)));
  }

  /**
   * Closer or wider.
   *
   * @param times below 1 closer
   * @param share the place that stays where it is, 0 at the left to 1 at the right
   */
  public PlotZoom by(double times, double share) {
    double left = out(all().from);
    double right = out(all().to);
    double width = out(to) - out(from);
    double wide = Math.min(right - left, Math.max(CLOSEST * (right - left), times * width));
    return placed(out(from) + share * (width - wide), wide);
  }

  /** Moved to the right by a share of the width. */
  public PlotZoom moved(double share) {
    double width = out(to) - out(from);
    return placed(out(from) + share * width, width);
  }

  /** So that an x is seen, as near to where it was as can be. */
  public PlotZoom showing(double x) {
    double width = out(to) - out(from);
    if (x < from) {
      return placed(out(x) - 0.1 * width, width);
    }
    return x > to ? placed(out(x) - 0.9 * width, width) : this;
  }

  private PlotZoom placed(double left, double width) {
    double least = out(all().from);
    double most = out(all().to);
    double at = Math.max(least, Math.min(most - width, left));
    boolean full = width >= most - least;
    return full ? all() : new PlotZoom(whole, back(at), back(at + width));
  }

  /** The plot as it is seen. */
  public PlotFigure figure() {
    return isAll()
        ? whole
        : new PlotFigure(
            whole.title(), whole.description(), whole.panels().stream().map(this::cut).toList());
  }

  private PlotPanel cut(PlotPanel panel) {
    PlotContent all = panel.content();
    PlotContent seen =
        new PlotContent(
            all.stripes(),
            all.spans().stream().filter(s -> s.to() > from && s.from() < to).toList(),
            all.lines().stream().map(this::cut).toList(),
            all.notes().stream().filter(n -> n.x() >= from && n.x() <= to).toList(),
            all.lanes());
    return new PlotPanel(
        panel.title(),
        panel.caption(),
        panel.x().between(from, to),
        panel.y(),
        seen,
        panel.share());
  }

  private PlotLine cut(PlotLine line) {
    List<PlotPoints> pieces = line.pieces().stream().map(this::cut).toList();
    boolean any = pieces.stream().anyMatch(piece -> !piece.isEmpty());
    return any ? new PlotLine(line.label(), pieces, line.look()) : line;
  }

  /** A little beyond the ends, so that lines go on to them. */
  private PlotPoints cut(PlotPoints all) {
    double beyond = BEYOND * (out(to) - out(from));
    double least = back(out(from) - beyond);
    double most = back(out(to) + beyond);
    int[] kept =
        IntStream.range(0, all.size())
            .filter(
                i ->
                    all.x(Math.min(all.size() - 1, i + 1)) >= least
                        && all.x(Math.max(0, i - 1)) <= most)
            .toArray();
    double[] x = Arrays.stream(kept).mapToDouble(all::x).toArray();
    double[] y = Arrays.stream(kept).mapToDouble(all::y).toArray();
    return all.hasBand()
        ? PlotPoints.withBand(
            x,
            y,
            Arrays.stream(kept).mapToDouble(all::low).toArray(),
            Arrays.stream(kept).mapToDouble(all::high).toArray())
        : PlotPoints.of(x, y);
  }

  /** What is seen, in words. */
  public String words(Messages messages) {
    PlotPanel last = whole.panels().get(whole.panels().size() - 1);
    PlotAxis.Scale scale = last.x().scale();
    return messages.text(
        "plot.zoom",
        last.x().name(),
        PlotCursor.onAxis(scale, from, messages.locale()),
        PlotCursor.onAxis(scale, to, messages.locale()));
  }
}
