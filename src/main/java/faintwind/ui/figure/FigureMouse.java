package faintwind.ui.figure;

import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PictureSize;
import faintwind.report.plot.PlotBox;
import faintwind.ui.part.PlotCard;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/**
 * The mouse on a plot: a click reads it there, Ctrl and the wheel look closer, dragging moves what
 * is seen closer, a double click shows everything again.
 */
final class FigureMouse {
  private static final double A_NOTCH = 0.8;
  private static final double STILL_PX = 3;

  private final PlotFigure figure;
  private final FigureView view;
  private final FigureReader reader;
  private final PlotCard card;
  private double pressed_px;
  private double last_px;

  private FigureMouse(PlotFigure figure, FigureView view, FigureReader reader, PlotCard card) {
    this.figure = figure;
    this.view = view;
    this.reader = reader;
    this.card = card;
  }

  static void over(PlotFigure figure, FigureView view, FigureReader reader, PlotCard card) {
    FigureMouse mouse = new FigureMouse(figure, view, reader, card);
    view.addEventHandler(ScrollEvent.SCROLL, mouse::wheel);
    view.addEventHandler(MouseEvent.MOUSE_PRESSED, mouse::pressed);
    view.addEventHandler(MouseEvent.MOUSE_DRAGGED, mouse::dragged);
    view.addEventHandler(MouseEvent.MOUSE_CLICKED, mouse::clicked);
  }

  private double share(double x_px) {
    PlotBox axes = axes();
    double share = (x_px / view.text() - axes.x()) / axes.width();
    return Math.max(0, Math.min(1, share));
  }

  private PlotBox axes() {
    PictureSize size = view.size();
    return figure.axes(size, view.style());
  }

  private void wheel(ScrollEvent event) {
    if (event.isControlDown() && event.getDeltaY() != 0) {
      double times = event.getDeltaY() > 0 ? A_NOTCH : 1 / A_NOTCH;
      card.readOut(reader.zoomed(times, share(event.getX())));
      event.consume();
    }
  }

  private void pressed(MouseEvent event) {
    pressed_px = event.getX();
    last_px = event.getX();
  }

  private void dragged(MouseEvent event) {
    if (!reader.isWhole()) {
      double moved = (last_px - event.getX()) / view.text() / axes().width();
      card.readOut(reader.dragged(moved));
      event.consume();
    }
    last_px = event.getX();
  }

  private void clicked(MouseEvent event) {
    card.requestFocus();
    if (event.getClickCount() == 2) {
      card.readOut(reader.whole());
    } else if (Math.abs(event.getX() - pressed_px) < STILL_PX) {
      reader.readAt(share(event.getX())).ifPresent(card::readOut);
    }
  }
}
