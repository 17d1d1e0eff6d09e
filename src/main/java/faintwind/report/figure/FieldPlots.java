package faintwind.report.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLane;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotStripe;
import faintwind.report.plot.PlotSummary;
import java.util.ArrayList;
import java.util.List;

/** The plot of a converted field log: speed with its band, the raw record, one lane a flag. */
public final class FieldPlots {
  private final Messages messages;

  public FieldPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * What a converted log shows.
   *
   * @param time the axis that x is in
   * @param speed speed with its band, in pieces between gaps, m/s
   * @param raw the signal, in pieces
   * @param signal name and unit of the signal
   * @param floor_m_s smallest speed that can be told from still air
   * @param lanes stretches of rows that carry each flag
   * @param notes peaks and the like, in the speed panel
   */
  public record Log(
      PlotAxis time,
      List<PlotPoints> speed,
      List<PlotPoints> raw,
      String signal,
      double floor_m_s,
      List<PlotLane> lanes,
      List<PlotNote> notes) {
    public Log {
      speed = List.copyOf(speed);
      raw = List.copyOf(raw);
      lanes = List.copyOf(lanes);
      notes = List.copyOf(notes);
    }

    /** First and last time on the axis. */
    public PlotLane.Stretch span() {
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (PlotPoints piece : raw.isEmpty() ? speed : raw) {
        from = Math.min(from, piece.x(0));
        to = Math.max(to, piece.x(piece.size() - 1));
      }
      return to > from ? new PlotLane.Stretch(from, to) : new PlotLane.Stretch(0, 1);
    }

    /** The stretch between two times of the axis. */
    public Log between(double from, double to) {
      return new Log(
          time,
          cut(speed, from, to),
          cut(raw, from, to),
          signal,
          floor_m_s,
          lanes.stream().map(lane -> lane.between(from, to)).toList(),
          notes.stream().filter(note -> note.x() >= from && note.x() <= to).toList());
    }

    private static List<PlotPoints> cut(List<PlotPoints> pieces, double from, double to) {
      return pieces.stream()
          .map(piece -> piece.between(from, to))
          .filter(piece -> !piece.isEmpty())
          .toList();
    }
  }

  /** Speed over the raw record over the flags, on one axis of time. */
  public PlotFigure log(Log log) {
    double from = log.span().from();
    double to = log.span().to();
    PlotAxis named = log.time().between(from, to);
    PlotAxis bare = PlotAxis.of("", log.time().scale()).between(from, to);
    List<PlotPanel> panels = new ArrayList<>();
    panels.add(speed(log, named));
    if (!log.raw().isEmpty()) {
      panels.add(raw(log, bare));
    }
    if (!log.lanes().isEmpty()) {
      panels.add(PlotPanel.of("", bare, PlotAxis.linear(""), PlotContent.lanes(log.lanes())));
    }
    return new PlotFigure(
        messages.text("plot.field.title"), PlotSummary.of(panels, messages), panels);
  }

  private PlotPanel raw(Log log, PlotAxis x) {
    Spikes spikes = Spikes.of(log.raw());
    return new PlotPanel(
        messages.text("plot.field.raw", log.signal()),
        spikes.any() ? messages.text("plot.spikes", spikes.count()) : "",
        x,
        spikes.without(PlotAxis.linear(log.signal())),
        PlotContent.lines(List.of(new PlotLine("", log.raw(), thin(PlotToken.SERIES_2)))),
        1);
  }

  private PlotPanel speed(Log log, PlotAxis x) {
    List<PlotStripe> stripes =
        log.floor_m_s() > 0
            ? List.of(new PlotStripe(0, log.floor_m_s(), PlotToken.GROUND))
            : List.of();
    PlotLine line = new PlotLine("", log.speed(), thin(PlotToken.SERIES_1));
    return new PlotPanel(
        messages.text("plot.field.speed"),
        messages.text("plot.field.speed.caption"),
        x,
        PlotAxis.fromZero(messages.text("plot.field.speed")),
        new PlotContent(stripes, List.of(), List.of(line), log.notes(), List.of()),
        3);
  }

  private static PlotLook thin(PlotToken colour) {
    return new PlotLook(colour, PlotDash.SOLID, PlotMarker.NONE, 1.6);
  }
}
