package faintwind.report.plot;

import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.List;

/** Curves against air speed, alone or side by side, as for comparing designs. */
public final class CurvePlots {
  private final Messages messages;

  public CurvePlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * Curves of one quantity against air speed; the first may carry a band, all are labelled at their
   * ends where there are several.
   *
   * @param title quantity and unit
   * @param caption fine words at the right, such as what the band means
   * @param curves label and points, in order of importance
   */
  public PlotFigure againstSpeed(String title, String caption, List<Curve> curves) {
    List<PlotLine> lines = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String label = curves.size() == 1 ? "" : curves.get(i).label();
      lines.add(PlotLine.of(label, curves.get(i).points(), PlotLook.series(i + 1)));
    }
    PlotPanel panel =
        new PlotPanel(
            title,
            caption,
            PlotAxis.fromZero(messages.text("plot.speed")),
            PlotAxis.fromZero(title),
            PlotContent.lines(lines),
            1);
    List<PlotPanel> panels = List.of(panel);
    return new PlotFigure(title, PlotSummary.of(panels, messages), panels);
  }

  /**
   * One curve.
   *
   * @param label name of the design or instrument
   * @param points speed in m/s against the quantity
   */
  public record Curve(String label, PlotPoints points) {}

  /**
   * The first slope of each run against its speed with the straight line through zero; only a first
   * look, and said so beside it.
   *
   * @param slopes speed (m/s) and first slope (signal unit a minute) of each run
   * @param perSpeed slope of the line, signal unit a minute for each m/s
   * @param unit symbol of the signal's unit
   * @param notes what is wrong with it, in words
   */
  public PlotFigure straightLine(
      PlotPoints slopes, double perSpeed, String unit, List<String> notes) {
    double fastest = 0;
    for (int i = 0; i < slopes.size(); i++) {
      fastest = Math.max(fastest, slopes.x(i));
    }
    double end = 1.08 * fastest;
    PlotLine line =
        PlotLine.of(
            "",
            PlotPoints.of(new double[] {0, end}, new double[] {0, perSpeed * end}),
            new PlotLook(PlotToken.SERIES_2, PlotDash.LONG, PlotMarker.NONE, 2.4));
    PlotLine runs =
        PlotLine.of(
            messages.text("plot.straight.runs"),
            slopes,
            PlotLook.markers(PlotMarker.RING, PlotToken.INK));
    PlotContent content =
        PlotContent.lines(List.of(line, runs))
            .with(new PlotNote(0.4 * end, 0.28 * perSpeed * end, notes, PlotToken.SERIES_2));
    PlotPanel panel =
        new PlotPanel(
            messages.text("plot.straight.title"),
            messages.text("plot.straight.caption", unit),
            PlotAxis.fromZero(messages.text("plot.speed")),
            PlotAxis.fromZero(messages.text("plot.straight.axis", unit)),
            content,
            1);
    List<PlotPanel> panels = List.of(panel);
    return new PlotFigure(
        messages.text("plot.straight.title"), PlotSummary.of(panels, messages), panels);
  }
}
