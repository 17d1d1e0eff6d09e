package faintwind.report.figure;

import faintwind.calibration.Calibration;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSpan;
import faintwind.report.plot.PlotStripe;
import faintwind.report.plot.PlotSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Plots of a calibration: how fast the ball sheds heat against speed, the speed error of each run,
 * the uncertainty and the response.
 */
public final class CalibrationPlots {
  private final Messages messages;

  public CalibrationPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * The loss G/C (per 1000 s) at rest against speed, with its 95 % band and a marker a run:
   * triangle down for clockwise, up for counter-clockwise, ring where no direction is recorded,
   * square for still air, cross for a run that was left out.
   *
   * @param runs where the directions stand; may be empty
   */
  public PlotFigure loss(Calibration calibration, List<Run> runs) {
    LossCurve curve = LossCurve.of(calibration);
    List<PlotLine> lines = new ArrayList<>();
    lines.add(PlotLine.of("", curve.points(), PlotLook.series(1)));
    lines.add(
        PlotLine.of(
            text("plot.still"),
            PlotPoints.of(new double[] {0}, new double[] {curve.stillLoss_per_ks()}),
            PlotLook.markers(PlotMarker.SQUARE, PlotToken.INK)));
    addRuns(lines, calibration, curve, runs);
    PlotContent content =
        PlotContent.lines(lines)
            .with(new PlotSpan(0, calibration.performance().floor_m_s(), "", PlotToken.GROUND));
    PlotPanel panel =
        new PlotPanel(
            text("plot.loss.title"),
            text("plot.loss.caption"),
            speedAxis(),
            PlotAxis.fromZero(text("plot.loss.axis")),
            content,
            1);
    return figure(text("plot.loss.title"), List.of(panel));
  }

  private void addRuns(
      List<PlotLine> lines, Calibration calibration, LossCurve curve, List<Run> runs) {
    for (Group group : Group.values()) {
      List<RunOutcome> members =
          calibration.evidence().runs().stream()
              .filter(o -> o.speed_m_s().isPresent() && Group.of(o, runs) == group)
              .toList();
      if (!members.isEmpty()) {
        lines.add(
            PlotLine.of(
                text(group.key),
                points(members, o -> curve.lossOf(o.speed_m_s().orElse(0) * (1 + o.residual()))),
                PlotLook.markers(group.marker, PlotToken.INK)));
      }
    }
  }

  /** Which marker a run gets. */
  private enum Group {
    CLOCKWISE("plot.cw", PlotMarker.TRIANGLE_DOWN),
    COUNTER("plot.ccw", PlotMarker.TRIANGLE_UP),
    OTHER("plot.run", PlotMarker.RING),
    LEFT_OUT("plot.left-out", PlotMarker.CROSS);

    private final String key;
    private final PlotMarker marker;

    Group(String key, PlotMarker marker) {
      this.key = key;
      this.marker = marker;
    }

    static Group of(RunOutcome outcome, List<Run> runs) {
      if (!outcome.used()) {
        return LEFT_OUT;
      }
      Optional<Direction> direction =
          runs.stream()
              .filter(r -> r.name().equals(outcome.run()))
              .findFirst()
              .flatMap(r -> r.conditions().direction());
      return direction.map(d -> d == Direction.CW ? CLOCKWISE : COUNTER).orElse(OTHER);
    }
  }

  /**
   * The speed error of each run in per cent: the complete formula as dots, the straight line (where
   * given) as squares, over a stripe of the median relative uncertainty.
   *
   * @param straightLine speed and relative error of each run by the straight line; may be empty
   */
  public PlotFigure errors(Calibration calibration, List<RunError> straightLine) {
    List<RunOutcome> moved =
        calibration.evidence().runs().stream().filter(o -> o.speed_m_s().isPresent()).toList();
    List<PlotLine> lines = new ArrayList<>();
    if (!straightLine.isEmpty()) {
      lines.add(
          PlotLine.of(
              text("plot.errors.straight"),
              PlotPoints.of(
                  straightLine.stream().mapToDouble(RunError::speed_m_s).toArray(),
                  straightLine.stream().mapToDouble(e -> 100 * e.relative()).toArray()),
              PlotLook.markers(PlotMarker.SQUARE, PlotToken.SERIES_2)));
    }
    lines.add(
        PlotLine.of(
            text("plot.errors.formula"),
            points(moved, o -> 100 * o.residual()),
            PlotLook.markers(PlotMarker.DOT, PlotToken.SERIES_1)));
    double half = 100 * medianRelativeU95(calibration);
    PlotPanel panel =
        PlotPanel.of(
            text("plot.errors.title"),
            speedAxis(),
            PlotAxis.of(text("plot.errors.axis"), PlotAxis.Scale.SIGNED),
            PlotContent.lines(lines).with(new PlotStripe(-half, half, PlotToken.GOOD_WASH)));
    return figure(text("plot.errors.title"), List.of(panel));
  }

  /**
   * Speed and relative error of one run by some other way.
   *
   * @param speed_m_s air speed by the arm
   * @param relative reading over speed less one
   */
  public record RunError(double speed_m_s, double relative) {}

  private static double medianRelativeU95(Calibration calibration) {
    double[] relative =
        calibration.performance().speeds().stream()
            .filter(s -> s.speed_m_s() >= calibration.coverage().lowest_m_s())
            .mapToDouble(s -> s.u95_m_s() / s.speed_m_s())
            .sorted()
            .toArray();
    return relative.length == 0 ? 0 : relative[relative.length / 2];
  }

  /** Loss curves of several calibrations over one another, oldest first. */
  public PlotFigure overlay(List<Calibration> calibrations) {
    return overlay(
        calibrations,
        calibrations.stream().map(c -> DateText.day(messages, c.origin().validFrom())).toList());
  }

  /** Loss curves of several calibrations over one another, each with its band and its own label. */
  public PlotFigure overlay(List<Calibration> calibrations, List<String> labels) {
    List<PlotLine> lines = new ArrayList<>();
    for (int i = 0; i < calibrations.size(); i++) {
      lines.add(
          PlotLine.of(
              labels.get(i), LossCurve.of(calibrations.get(i)).points(), PlotLook.series(i + 1)));
    }
    PlotPanel panel =
        new PlotPanel(
            text("plot.overlay.title"),
            text("plot.loss.caption"),
            speedAxis(),
            PlotAxis.fromZero(text("plot.loss.axis")),
            PlotContent.lines(lines),
            1);
    return figure(text("plot.overlay.title"), List.of(panel));
  }

  private static PlotPoints points(List<RunOutcome> runs, ToDoubleFunction<RunOutcome> value) {
    return PlotPoints.of(
        runs.stream().mapToDouble(o -> o.speed_m_s().orElse(0)).toArray(),
        runs.stream().mapToDouble(value).toArray());
  }

  private PlotAxis speedAxis() {
    return PlotAxis.fromZero(text("plot.speed"));
  }

  private PlotFigure figure(String title, List<PlotPanel> panels) {
    return new PlotFigure(title, PlotSummary.of(panels, messages), panels);
  }

  private String text(String key) {
    return messages.text(key);
  }
}
