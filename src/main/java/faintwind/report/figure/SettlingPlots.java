package faintwind.report.figure;

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

/** How the uncertainty by refits settles beside that of the fit, while the refits are made. */
public final class SettlingPlots {
  private static final double LOW = 0.5;
  private static final double HIGH = 1.5;

  private final Messages messages;

  public SettlingPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * The curve so far.
   *
   * @param refits how many there were, rising; at least one
   * @param shares the uncertainty by so many, as a share of the fit's own
   * @param wanted how many there will be
   */
  public PlotFigure figure(double[] refits, double[] shares, double wanted) {
    PlotLine fit =
        PlotLine.of(
            messages.text("plot.settling.fit"),
            PlotPoints.of(new double[] {0, wanted}, new double[] {1, 1}),
            new PlotLook(PlotToken.INK_SOFT, PlotDash.LONG, PlotMarker.NONE, 1.4));
    PlotLine drawn =
        PlotLine.of(
            messages.text("plot.settling.refits"),
            PlotPoints.of(refits, shares),
            PlotLook.series(1));
    PlotPanel panel =
        new PlotPanel(
            messages.text("plot.settling.title"),
            messages.text("plot.settling.caption"),
            PlotAxis.linear(messages.text("plot.settling.x")).between(0, wanted),
            PlotAxis.linear(messages.text("plot.settling.y")).between(LOW, HIGH),
            PlotContent.lines(List.of(fit, drawn)),
            1);
    List<PlotPanel> panels = List.of(panel);
    return new PlotFigure(
        messages.text("plot.settling.title"), PlotSummary.of(panels, messages), panels);
  }
}
