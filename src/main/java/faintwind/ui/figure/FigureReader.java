package faintwind.ui.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotCursor;
import faintwind.report.paint.PlotCursor.Move;
import faintwind.report.paint.PlotFigure;
import faintwind.report.paint.PlotZoom;
import faintwind.report.paint.ReadFigure;
import faintwind.ui.part.PlotCard;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;

/** Reads a plot point by point, drawn where it is read, and looks at stretches of it closer. */
final class FigureReader implements PlotCard.Reader {
  private static final Map<KeyCode, Move> MOVES =
      Map.of(
          KeyCode.LEFT, Move.BACK,
          KeyCode.RIGHT, Move.ON,
          KeyCode.HOME, Move.FIRST,
          KeyCode.END, Move.LAST,
          KeyCode.UP, Move.LINE_BEFORE,
          KeyCode.DOWN, Move.LINE_AFTER);

  /** Keys that look closer, and those that look from farther away. */
  private static final Map<KeyCode, Double> ZOOMS =
      Map.of(KeyCode.PAGE_UP, 0.5, KeyCode.PAGE_DOWN, 2.0);

  private final PlotFigure figure;
  private final FigureView view;
  private final Messages words;
  private PlotZoom zoom;
  private Optional<PlotCursor> cursor = Optional.empty();

  FigureReader(PlotFigure figure, FigureView view, Messages words) {
    this.figure = figure;
    this.view = view;
    this.words = words;
    zoom = PlotZoom.all(figure);
  }

  @Override
  public Optional<String> moved(KeyCode key) {
    Optional<Double> times = Optional.ofNullable(ZOOMS.get(key));
    if (times.isPresent()) {
      double share = cursor.map(at -> share(at.x())).orElse(0.5);
      return Optional.of(zoomed(zoom.by(times.get(), share)));
    }
    Move move = MOVES.get(key);
    if (move == null) {
      return Optional.empty();
    }
    // the first key only shows the cursor, where the plot begins
    cursor = cursor.isEmpty() ? start() : cursor.map(at -> at.moved(move));
    cursor.ifPresent(at -> zoom = zoom.showing(at.x()));
    return read();
  }

  private Optional<PlotCursor> start() {
    return PlotCursor.on(figure.panels()).map(at -> zoom.isAll() ? at : at.near(zoom.at(0.1)));
  }

  private double share(double x) {
    double from = zoom.at(0);
    return Math.max(0, Math.min(1, (x - from) / (zoom.at(1) - from)));
  }

  /** Reads the line that is read, or the first one, at a share of the width. */
  Optional<String> readAt(double share) {
    cursor = cursor.or(() -> PlotCursor.on(figure.panels())).map(at -> at.near(zoom.at(share)));
    return read();
  }

  /** Closer or wider round a share of the width. */
  String zoomed(double times, double share) {
    return zoomed(zoom.by(times, share));
  }

  /** Moves what is seen by a share of the width. */
  String dragged(double share) {
    return zoomed(zoom.moved(share));
  }

  /** Everything again. */
  String whole() {
    return zoomed(PlotZoom.all(figure));
  }

  boolean isWhole() {
    return zoom.isAll();
  }

  private String zoomed(PlotZoom now) {
    zoom = now;
    draw();
    return zoom.words(words);
  }

  private Optional<String> read() {
    draw();
    return cursor.map(at -> at.words(words));
  }

  private void draw() {
    PlotFigure seen = zoom.figure();
    cursor.ifPresentOrElse(at -> view.show(new ReadFigure(seen, at)), () -> view.show(seen));
  }

  @Override
  public void gone() {
    cursor = Optional.empty();
    draw();
  }
}
