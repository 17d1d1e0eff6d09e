package faintwind.ui.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotCursor;
import faintwind.report.paint.PlotCursor.Move;
import faintwind.report.paint.PlotFigure;
import faintwind.report.paint.ReadFigure;
import faintwind.ui.part.PlotCard;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;

/** Reads a plot point by point, drawn where it is read. */
final class FigureReader implements PlotCard.Reader {
  private static final Map<KeyCode, Move> MOVES =
      Map.of(
          KeyCode.LEFT, Move.BACK,
          KeyCode.RIGHT, Move.ON,
          KeyCode.HOME, Move.FIRST,
          KeyCode.END, Move.LAST,
          KeyCode.UP, Move.LINE_BEFORE,
          KeyCode.DOWN, Move.LINE_AFTER);

  private final PlotFigure figure;
  private final FigureView view;
  private final Messages words;
  private Optional<PlotCursor> cursor = Optional.empty();

  FigureReader(PlotFigure figure, FigureView view, Messages words) {
    this.figure = figure;
    this.view = view;
    this.words = words;
  }

  @Override
  public Optional<String> moved(KeyCode key) {
    Move move = MOVES.get(key);
    if (move == null) {
      return Optional.empty();
    }
    // the first key only shows the cursor, where the plot begins
    cursor = cursor.isEmpty() ? PlotCursor.on(figure.panels()) : cursor.map(at -> at.moved(move));
    cursor.ifPresent(at -> view.show(new ReadFigure(figure, at)));
    return cursor.map(at -> at.words(words));
  }

  @Override
  public void gone() {
    cursor = Optional.empty();
    view.show(figure);
  }
}
