package faintwind.ui.field;

import faintwind.report.figure.FieldPlots;
import faintwind.report.plot.PlotLane;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.PlotCard;
import faintwind.ui.part.Words;
import java.util.List;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.controlsfx.control.RangeSlider;

/**
 * The plot of one log or of several, with the stretch that is drawn and, where wanted, the rows of
 * that stretch.
 */
final class FieldPlotView extends VBox {
  private static final double HEIGHT_EM = 36;
  private static final double STRETCH_STEPS = 40;
  private static final Duration REST = Duration.millis(150);

  private final Desk desk;
  private final FieldPlots.Log whole;
  private final LogTime time;
  private final List<FieldWords> logs;
  private final RangeSlider slider;
  private final Label shown;
  private final Hyperlink rowsLink;
  private final VBox rows = new VBox();
  private final VBox plotPlace;
  private boolean withRows;

  /**
   * A view.
   *
   * @param time the axis of the plot
   * @param logs what is drawn, by time
   */
  FieldPlotView(Desk desk, FieldPlots.Log whole, LogTime time, List<FieldWords> logs) {
    this.desk = desk;
    this.whole = whole;
    this.time = time;
    this.logs = logs;
    PlotLane.Stretch all = whole.span();
    slider = new RangeSlider(all.from(), all.to(), all.from(), all.to());
    slider.setId("field-stretch");
    slider.setBlockIncrement((all.to() - all.from()) / STRETCH_STEPS);
    slider.setAccessibleText(desk.text("field.stretch"));
    shown = Words.label(desk.text("field.stretch"), "fine", "soft");
    rowsLink = Words.link("field-rows-link", desk.text("field.rows.show"), this::toggleRows);
    VBox.setVgrow(this, Priority.ALWAYS);
    HBox head = Boxes.row("ways", Boxes.grow(shown), rowsLink);
    plotPlace = new VBox(plot(whole));
    VBox.setVgrow(plotPlace, Priority.ALWAYS);
    getChildren().setAll(new VBox(head, slider), rows, plotPlace);
    followSlider();
  }

  private void followSlider() {
    PauseTransition rest = new PauseTransition(REST);
    rest.setOnFinished(event -> moved());
    InvalidationListener moved = property -> rest.playFromStart();
    slider.lowValueProperty().addListener(moved);
    slider.highValueProperty().addListener(moved);
  }

  private void moved() {
    double from = slider.getLowValue();
    double to = to();
    shown.setText(desk.text("field.stretch.shown", time.said(from), time.said(to)));
    slider.setAccessibleText(shown.getText());
    FieldPlots.Log picked = whole.between(from, to);
    if (!picked.raw().isEmpty() || !picked.speed().isEmpty()) {
      plotPlace.getChildren().setAll(plot(picked));
    }
    if (withRows) {
      showRows();
    }
  }

  private double to() {
    return Math.max(slider.getHighValue(), slider.getLowValue() + slider.getBlockIncrement());
  }

  private void toggleRows() {
    withRows = !withRows;
    rowsLink.setText(desk.text(withRows ? "field.rows.hide" : "field.rows.show"));
    rows.getChildren().clear();
    if (withRows) {
      showRows();
    }
  }

  private void showRows() {
    rows.getChildren().setAll(new FieldRowsView(desk, time, logs, slider.getLowValue(), to()));
  }

  private PlotCard plot(FieldPlots.Log picked) {
    PlotCard card =
        FigureCard.of("field-plot", new FieldPlots(desk.words()).log(picked), HEIGHT_EM, desk);
    VBox.setVgrow(card, Priority.ALWAYS);
    return card;
  }
}
