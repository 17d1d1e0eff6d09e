package faintwind.report.figure;

import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.FieldSummary.Hour;
import faintwind.calibration.field.FieldSummary.Percentile;
import faintwind.calibration.field.StretchMean;
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
import faintwind.report.plot.PlotStripe;
import faintwind.report.plot.PlotSummary;
import java.util.List;

/** The figures of a field log as a picture: hour by hour, and which share of the time how fast. */
public final class SummaryPlots {
  private static final double DAY_S = 86_400;

  private final Messages messages;

  public SummaryPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * Means of the hours with their band over percentiles of the whole time.
   *
   * @param zero_s seconds since midnight at the log's time 0; 0 where that is not known
   */
  public PlotFigure figure(FieldSummary found, double zero_s) {
    List<PlotPanel> panels = List.of(hours(found, zero_s), shares(found));
    return new PlotFigure(
        messages.text("plot.summary-figure.title"), PlotSummary.of(panels, messages), panels);
  }

  private PlotPanel hours(FieldSummary found, double zero_s) {
    List<Hour> hours = found.hours().stream().filter(h -> h.mean().isPresent()).toList();
    boolean days = found.cover().to_s() - found.cover().from_s() > 2 * DAY_S;
    double unit_s = days ? DAY_S : 1;
    double[] x =
        hours.stream()
            .mapToDouble(h -> (zero_s + h.from_s() + Hour.LENGTH_S / 2) / unit_s)
            .toArray();
    List<StretchMean> means = hours.stream().flatMap(h -> h.mean().stream()).toList();
    double[] y = means.stream().mapToDouble(StretchMean::speed_m_s).toArray();
    double[] low =
        means.stream().mapToDouble(m -> Math.max(0, m.speed_m_s() - m.u95_m_s())).toArray();
    double[] high = means.stream().mapToDouble(m -> m.speed_m_s() + m.u95_m_s()).toArray();
    PlotLine mean =
        PlotLine.of(
            messages.text("plot.summary-figure.mean"),
            PlotPoints.withBand(x, y, low, high),
            new PlotLook(PlotToken.SERIES_1, PlotDash.SOLID, PlotMarker.RING, 1.6));
    double[] most = hours.stream().mapToDouble(Hour::highest_m_s).toArray();
    PlotLine highest =
        PlotLine.of(
            messages.text("plot.summary-figure.highest"),
            PlotPoints.of(x, most),
            new PlotLook(PlotToken.SERIES_2, PlotDash.SHORT, PlotMarker.NONE, 1.6));
    return new PlotPanel(
        messages.text("plot.summary-figure.hours"),
        messages.text("plot.summary-figure.band"),
        days
            ? PlotAxis.linear(messages.text("plot.summary-figure.days"))
            : PlotAxis.of(messages.text("plot.summary-figure.clock"), PlotAxis.Scale.CLOCK),
        PlotAxis.fromZero(messages.text("plot.field.speed")),
        PlotContent.lines(List.of(mean, highest)),
        2);
  }

  private PlotPanel shares(FieldSummary found) {
    List<Percentile> all = found.percentiles();
    double[] x = all.stream().mapToDouble(Percentile::percent).toArray();
    double[] y = all.stream().mapToDouble(Percentile::speed_m_s).toArray();
    double[] low =
        all.stream().mapToDouble(p -> Math.max(0, p.speed_m_s() - p.u95_m_s())).toArray();
    double[] high = all.stream().mapToDouble(p -> p.speed_m_s() + p.u95_m_s()).toArray();
    PlotLine line =
        PlotLine.of(
            "",
            PlotPoints.withBand(x, y, low, high),
            new PlotLook(PlotToken.SERIES_1, PlotDash.SOLID, PlotMarker.RING, 1.6));
    return new PlotPanel(
        messages.text("plot.summary-figure.shares"),
        messages.text("plot.summary-figure.calm"),
        PlotAxis.linear(messages.text("plot.summary-figure.percent")).between(0, 100),
        PlotAxis.fromZero(messages.text("plot.field.speed")),
        new PlotContent(
            List.of(new PlotStripe(0, found.calm().limit_m_s(), PlotToken.GROUND)),
            List.of(),
            List.of(line),
            List.of(),
            List.of()),
        1);
  }
}
