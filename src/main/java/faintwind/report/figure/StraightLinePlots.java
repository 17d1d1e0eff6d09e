package faintwind.report.figure;

import faintwind.calibration.response.StraightLineLook;
import faintwind.calibration.response.StraightLineLook.Misreading;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSummary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The straight-line look as a plot; only a first look, and said so beside it. */
public final class StraightLinePlots {
  private static final double PER_MINUTE = 60;

  private final Messages messages;

  public StraightLinePlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * The first slope of each run (signal unit a minute) against its speed, with the straight line
   * through zero; empty where no run began near full temperature.
   *
   * @param unit symbol of the signal's unit
   */
  public Optional<PlotFigure> figure(StraightLineLook look, String unit) {
    return look.points().isEmpty() || !(look.slope_per_m() > 0)
        ? Optional.empty()
        : Optional.of(draw(look, unit));
  }

  /** What the straight line makes of each run's speed, relative to it. */
  public static List<CalibrationPlots.RunError> errors(StraightLineLook look) {
    return look.slope_per_m() > 0
        ? look.points().stream()
            .map(
                p ->
                    new CalibrationPlots.RunError(
                        p.speed_m_s(), p.slope_per_s() / look.slope_per_m() / p.speed_m_s() - 1))
            .toList()
        : List.of();
  }

  private PlotFigure draw(StraightLineLook look, String unit) {
    double perSpeed = PER_MINUTE * look.slope_per_m();
    double end =
        1.08
            * look.points().stream()
                .mapToDouble(StraightLineLook.Point::speed_m_s)
                .max()
                .orElseThrow();
    PlotLine line =
        PlotLine.of(
            "",
            PlotPoints.of(new double[] {0, end}, new double[] {0, perSpeed * end}),
            new PlotLook(PlotToken.SERIES_2, PlotDash.LONG, PlotMarker.NONE, 2.4));
    PlotLine runs =
        PlotLine.of(
            messages.text("plot.straight.runs"),
            PlotPoints.of(
                look.points().stream().mapToDouble(StraightLineLook.Point::speed_m_s).toArray(),
                look.points().stream().mapToDouble(p -> PER_MINUTE * p.slope_per_s()).toArray()),
            PlotLook.markers(PlotMarker.RING, PlotToken.INK));
    PlotContent content =
        PlotContent.lines(List.of(line, runs))
            .with(new PlotNote(0.4 * end, 0.28 * perSpeed * end, notes(look), PlotToken.SERIES_2));
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

  private List<String> notes(StraightLineLook look) {
    List<String> notes = new ArrayList<>();
    look.errors().stream()
        .max(Comparator.comparingDouble(Misreading::relative))
        .filter(e -> e.relative() > 0)
        .ifPresent(e -> notes.add(error("plot.straight.high", e)));
    look.errors().stream()
        .min(Comparator.comparingDouble(Misreading::relative))
        .filter(e -> e.relative() < 0)
        .ifPresent(e -> notes.add(error("plot.straight.low", e)));
    notes.add(messages.text("plot.straight.first"));
    notes.add(messages.text("plot.straight.never"));
    return notes;
  }

  private String error(String key, Misreading error) {
    String speed = Numerals.digits(error.speed_m_s(), 2);
    return messages.text(key, Math.round(100 * Math.abs(error.relative())), speed);
  }
}
