package faintwind.report.figure;

import faintwind.calibration.bench.ControlChart;
import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSummary;
import java.util.List;
import java.util.stream.IntStream;

/** A control chart as a plot: every value in the order it was taken, mean and limits across. */
public final class ControlChartPlots {
  private static final double BESIDE = 0.5;

  private final Messages messages;

  public ControlChartPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * The chart as a plot.
   *
   * @param what what was measured
   * @param unit its unit
   */
  public PlotFigure figure(ControlChart chart, String what, String unit) {
    int n = chart.values().size();
    PlotLine values =
        PlotLine.of(
            messages.text("plot.chart.values"),
            PlotPoints.of(
                IntStream.rangeClosed(1, n).asDoubleStream().toArray(),
                chart.values().stream().mapToDouble(v -> v).toArray()),
            new PlotLook(PlotToken.INK, PlotDash.SOLID, PlotMarker.RING, 1.2));
    List<PlotLine> lines =
        List.of(
            across("plot.chart.mean", chart.mean(), n, PlotDash.SOLID),
            across("plot.chart.limits", chart.low(), n, PlotDash.LONG),
            across("", chart.high(), n, PlotDash.LONG),
            values);
    PlotPanel panel =
        new PlotPanel(
            messages.text("plot.chart.title", what),
            messages.text("plot.chart.caption"),
            PlotAxis.linear(messages.text("plot.chart.order")).between(1 - BESIDE, n + BESIDE),
            PlotAxis.linear(messages.text("plot.chart.axis", unit)),
            PlotContent.lines(lines),
            1);
    List<PlotPanel> panels = List.of(panel);
    return new PlotFigure(panel.title(), PlotSummary.of(panels, messages), panels);
  }

  private PlotLine across(String key, double value, int n, PlotDash dash) {
    return PlotLine.of(
        key.isEmpty() ? "" : messages.text(key),
        PlotPoints.of(new double[] {1 - BESIDE, n + BESIDE}, new double[] {value, value}),
        new PlotLook(PlotToken.SERIES_2, dash, PlotMarker.NONE, 1.6));
  }
}
