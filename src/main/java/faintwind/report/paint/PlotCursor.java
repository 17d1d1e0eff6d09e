package faintwind.report.paint;

import faintwind.message.Messages;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSummary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A place on a line of a plot from which the numbers are read: along the line, from line to line,
 * and in words. Immutable; every move gives a new one.
 */
public final class PlotCursor {
  private static final int MOVES_ACROSS = 60;

  private final List<Track> tracks;
  private final int track;
  private final int point;

  private PlotCursor(List<Track> tracks, int track, int point) {
    this.tracks = tracks;
    this.track = track;
    this.point = point;
  }

  /** One point of a line. */
  private record Point(double x, double y, double low, double high) {}

  /** A line with its points in order of x. */
  private record Track(int panel, PlotPanel of, PlotLine line, List<Point> points) {
    double width() {
      return points.get(points.size() - 1).x - points.get(0).x;
    }
  }

  /** Which way to move. */
  public enum Move {
    BACK,
    ON,
    FIRST,
    LAST,
    LINE_BEFORE,
    LINE_AFTER
  }

  /** At the first point of the first line; empty where the panels have none. */
  public static Optional<PlotCursor> on(List<PlotPanel> panels) {
    List<Track> tracks = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      PlotPanel panel = panels.get(i);
      for (PlotLine line : panel.content().lines()) {
        List<Point> points = points(line);
        if (!points.isEmpty()) {
          tracks.add(new Track(i, panel, line, points));
        }
      }
    }
    return tracks.isEmpty() ? Optional.empty() : Optional.of(new PlotCursor(tracks, 0, 0));
  }

  private static List<Point> points(PlotLine line) {
    List<Point> points = new ArrayList<>();
    for (PlotPoints piece : line.pieces()) {
      for (int i = 0; i < piece.size(); i++) {
        points.add(new Point(piece.x(i), piece.y(i), piece.low(i), piece.high(i)));
      }
    }
    points.sort(Comparator.comparingDouble(Point::x));
    return points;
  }

  /** The same line at the point nearest to an x. */
  public PlotCursor near(double x) {
    List<Point> points = here().points;
    int nearest = 0;
    for (int i = 1; i < points.size(); i++) {
      if (Math.abs(points.get(i).x - x) < Math.abs(points.get(nearest).x - x)) {
        nearest = i;
      }
    }
    return new PlotCursor(tracks, track, nearest);
  }

  /** One move; at an end it stays. */
  public PlotCursor moved(Move move) {
    return switch (move) {
      case BACK -> along(-1);
      case ON -> along(1);
      case FIRST -> new PlotCursor(tracks, track, 0);
      case LAST -> new PlotCursor(tracks, track, here().points.size() - 1);
      case LINE_BEFORE -> onLine(track - 1);
      case LINE_AFTER -> onLine(track + 1);
    };
  }

  /** To the next point, or on a dense line so far that some sixty moves cross it. */
  private PlotCursor along(int direction) {
    List<Point> points = here().points;
    double start = points.get(point).x;
    int at = point;
    do {
      at += direction;
    } while (at > 0
        && at < points.size() - 1
        && Math.abs(points.get(at).x - start) < here().width() / MOVES_ACROSS);
    return new PlotCursor(tracks, track, Math.max(0, Math.min(points.size() - 1, at)));
  }

  private PlotCursor onLine(int other) {
    int line = Math.max(0, Math.min(tracks.size() - 1, other));
    return new PlotCursor(tracks, line, 0).near(x());
  }

  private Track here() {
    return tracks.get(track);
  }

  /** Which panel of the figure it is on. */
  int panel() {
    return here().panel;
  }

  /** The x where it reads. */
  public double x() {
    return here().points.get(point).x;
  }

  double y() {
    return here().points.get(point).y;
  }

  /** What stands there, with the line's name, the axes' names and the band. */
  public String words(Messages messages) {
    Point at = here().points.get(point);
    Locale locale = messages.locale();
    PlotPanel panel = here().of;
    String name = here().line.label().isEmpty() ? panel.title() : here().line.label();
    String axis = panel.x().name().isEmpty() ? shared(panel.x()) : panel.x().name();
    String place = onAxis(panel.x().scale(), at.x, locale);
    String value = onAxis(panel.y().scale(), at.y, locale);
    return at.low < at.high
        ? messages.text(
            "plot.cursor.band",
            name,
            axis,
            place,
            value,
            onAxis(panel.y().scale(), at.low, locale),
            onAxis(panel.y().scale(), at.high, locale))
        : messages.text("plot.cursor", name, axis, place, value);
  }

  /** A panel without a name for its x shares that of the panel that has one. */
  private String shared(PlotAxis axis) {
    return tracks.stream()
        .map(track -> track.of.x())
        .filter(x -> x.scale() == axis.scale() && !x.name().isEmpty())
        .map(PlotAxis::name)
        .findFirst()
        .orElse("");
  }

  static String onAxis(PlotAxis.Scale scale, double value, Locale locale) {
    return switch (scale) {
      case CLOCK -> timeOfDay(value);
      case MINUTES -> PlotSummary.number(value / 60, locale);
      case LINEAR, SIGNED, LOGARITHMIC -> PlotSummary.number(value, locale);
    };
  }

  /** Seconds since midnight as a time of day, such as 12:15:00. */
  public static String timeOfDay(double seconds) {
    long whole = Math.round(seconds);
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d",
        Math.floorMod(whole / 3600, 24L),
        whole / 60 % 60,
        whole % 60);
  }
}
