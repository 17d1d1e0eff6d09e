package faintwind.report.figure;

import faintwind.calibration.Calibration;
import faintwind.calibration.Coverage;
import faintwind.calibration.Performance.AtSpeed;
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
import java.util.function.ToDoubleFunction;

/**
 * How sure and how quick a calibrated instrument is at each speed; dashed where it was not tried.
 */
public final class BandPlots {
  private static final PlotLook BEYOND =
      new PlotLook(PlotToken.SERIES_1, PlotDash.SHORT, PlotMarker.NONE, 1.8);

  private final Messages messages;

  public BandPlots(Messages messages) {
    this.messages = messages;
  }

  /** Relative expanded uncertainty (95 %) in per cent against speed. */
  public PlotFigure u95(Calibration calibration) {
    return bySpeed(
        calibration,
        messages.text("plot.u95.title"),
        PlotAxis.fromZero(messages.text("plot.u95.axis")),
        s -> 100 * s.u95_m_s() / s.speed_m_s());
  }

  /** Rise time against speed. */
  public PlotFigure response(Calibration calibration) {
    return bySpeed(
        calibration,
        messages.text("plot.response.title"),
        PlotAxis.fromZero(messages.text("plot.response.axis")),
        AtSpeed::rise_s);
  }

  private PlotFigure bySpeed(
      Calibration calibration, String title, PlotAxis y, ToDoubleFunction<AtSpeed> value) {
    double floor = calibration.performance().floor_m_s();
    List<AtSpeed> speeds =
        calibration.performance().speeds().stream()
            .filter(s -> s.speed_m_s() > 0 && s.speed_m_s() >= 0.5 * floor)
            .toList();
    Coverage covered = calibration.coverage();
    List<AtSpeed> tried = speeds.stream().filter(s -> !covered.isBeyond(s.speed_m_s())).toList();
    List<PlotPoints> beyond =
        tried.isEmpty()
            ? List.of(curve(speeds, value))
            : List.of(
                curve(speeds.subList(0, speeds.indexOf(tried.get(0)) + 1), value),
                curve(
                    speeds.subList(speeds.indexOf(tried.get(tried.size() - 1)), speeds.size()),
                    value));
    boolean any = tried.size() < speeds.size();
    PlotPanel panel =
        new PlotPanel(
            title,
            any ? messages.text("plot.beyond") : "",
            PlotAxis.of(messages.text("plot.speed"), PlotAxis.Scale.LOGARITHMIC),
            y,
            PlotContent.lines(
                List.of(
                    PlotLine.of("", curve(tried, value), PlotLook.series(1)),
                    new PlotLine(
                        messages.text("plot.beyond.line"), any ? beyond : List.of(), BEYOND))),
            1);
    return new PlotFigure(title, PlotSummary.of(List.of(panel), messages), List.of(panel));
  }

  private static PlotPoints curve(List<AtSpeed> speeds, ToDoubleFunction<AtSpeed> value) {
    return PlotPoints.of(
        speeds.stream().mapToDouble(AtSpeed::speed_m_s).toArray(),
        speeds.stream().mapToDouble(value).toArray());
  }
}
