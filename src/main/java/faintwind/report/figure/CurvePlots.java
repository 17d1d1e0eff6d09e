package faintwind.report.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSummary;
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
    return panel(messages.text("plot.speed"), title, caption, curves);
  }

  /**
   * Curves of one quantity against another, labelled at their ends; one alone at the right.
   *
   * @param axis the other quantity and its unit
   * @param title quantity and unit
   * @param curves label and points, in order of importance
   */
  public PlotFigure against(String axis, String title, List<Curve> curves) {
    return panel(axis, title, curves.size() == 1 ? curves.get(0).label() : "", curves);
  }

  private PlotFigure panel(String axis, String title, String caption, List<Curve> curves) {
    List<PlotLine> lines = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String label = curves.size() == 1 ? "" : curves.get(i).label();
      lines.add(PlotLine.of(label, curves.get(i).points(), PlotLook.series(i + 1)));
    }
    PlotPanel panel =
        new PlotPanel(
            title,
            caption,
            PlotAxis.fromZero(axis),
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
}
