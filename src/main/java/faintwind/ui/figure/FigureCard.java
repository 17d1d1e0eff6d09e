package faintwind.ui.figure;

import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.paint.PlotCursor;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotTable;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.PlotCard;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A plot of the report package as a card of the window, with its numbers as a table. */
public final class FigureCard {
  private static final int SIGNIFICANT = 5;

  /** Numbers of a row: x, y, and the edges of a band. */
  private static final int MOST_NUMBERS = 4;

  private static final double MINUTE_S = 60;

  private FigureCard() {}

  /**
   * A card.
   *
   * @param id stable id
   * @param height_em preferred height of the drawing
   */
  public static PlotCard of(String id, PlotFigure figure, double height_em, Desk desk) {
    FigureView view = new FigureView(desk.look(), desk.words().locale(), height_em);
    view.show(figure);
    VBox.setVgrow(view, Priority.ALWAYS);
    PlotCard card =
        new PlotCard("", "", figure.description(), view, () -> table(figure, desk.words()));
    card.setId(id);
    card.setAccessibleText(figure.title() + ". " + figure.description());
    FigureReader reader = new FigureReader(figure, view, desk.words());
    FigureMouse.over(figure, view, reader, card);
    return card.withTableHint(desk.words()).withReader(reader);
  }

  /** Every number of the figure, one row a point. */
  static PlotCard.Table table(PlotFigure figure, Messages words) {
    List<List<String>> rows = new ArrayList<>();
    for (PlotTable table : figure.tables()) {
      Map<String, double[]> largest = largest(table);
      for (PlotTable.Row row : table.rows()) {
        List<String> cells = new ArrayList<>();
        cells.add(row.series().isEmpty() ? table.title() : row.series());
        double[] tops = largest.getOrDefault(row.series(), new double[MOST_NUMBERS]);
        for (int i = 0; i < row.numbers().size(); i++) {
          double value = row.numbers().get(i);
          cells.add(i < row.places() ? place(table.x(), value, tops[i]) : number(value, tops[i]));
        }
        while (cells.size() < 5) {
          cells.add("");
        }
        rows.add(cells);
      }
    }
    List<String> axes = figure.tables().get(0).columns();
    return new PlotCard.Table(
        List.of(
            words.text("window.plot.series"),
            axes.get(0).isEmpty() ? words.text("window.plot.x") : axes.get(0),
            axes.get(1),
            words.text("window.plot.low"),
            words.text("window.plot.high")),
        rows);
  }

  /** Of each column the largest size of a number, by series. */
  private static Map<String, double[]> largest(PlotTable table) {
    Map<String, double[]> all = new HashMap<>();
    for (PlotTable.Row row : table.rows()) {
      double[] tops = all.computeIfAbsent(row.series(), series -> new double[MOST_NUMBERS]);
      for (int i = 0; i < row.numbers().size(); i++) {
        double size = Math.abs(row.numbers().get(i));
        tops[i] = Double.isFinite(size) ? Math.max(tops[i], size) : tops[i];
      }
    }
    return all;
  }

  /** A place along the first axis, as its ticks say it. */
  private static String place(PlotAxis.Scale scale, double value, double largest) {
    return switch (scale) {
      case CLOCK -> PlotCursor.timeOfDay(value);
      case MINUTES -> number(value / MINUTE_S, largest / MINUTE_S);
      case LINEAR, SIGNED, LOGARITHMIC -> number(value, largest);
    };
  }

  /** To as many decimals as the largest of its column has: a speed near 0 is no finer than that. */
  private static String number(double value, double largest) {
    if (!Double.isFinite(value) || largest == 0) {
      return Numerals.digits(value, SIGNIFICANT);
    }
    int places = SIGNIFICANT - 1 - (int) Math.floor(Math.log10(largest));
    return Numerals.shortest(value, places);
  }
}
