package faintwind.ui.home;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.PairDrawing;
import faintwind.ui.part.Words;
import javafx.event.Event;
import javafx.scene.AccessibleRole;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One instrument in the list: name, eight lengths from parts to use, what is next. */
final class HomeRow extends FoldingRow {
  private final CheckBox tick = new CheckBox();

  HomeRow(HomeView.Line line, Messages words, Runnable open) {
    super("row home-row");
    setId("instrument-" + line.folder().getFileName());
    PairDrawing pair = PairDrawing.metal(words.text("window.sign"));
    VBox name =
        Boxes.column(
            "home-name",
            Words.label(line.name(), "tell", "semibold"),
            Words.label(line.what(), "fine", "soft"));
    line.board()
        .range()
        .ifPresent(
            range ->
                name.getChildren()
                    .addAll(
                        Words.label(line.board().calibration(), "fine", "soft"),
                        new SpeedBand(range)));
    HBox lengths = Boxes.row("lengths");
    for (HomeView.Length length : line.lengths()) {
      String said = length.stage() + ": " + words.text(length.mark().key());
      MarkShape mark = new MarkShape(length.mark(), said, 0.6);
      Tooltip.install(mark, new Tooltip(said));
      lengths.getChildren().add(mark);
    }
    Label word = Words.whole(line.state().word(), "bold", line.state().mark().styleClass());
    HBox said = Boxes.row("home-said", word, Words.label(line.state().note()));
    VBox path = Boxes.column("home-path", lengths, said);
    VBox next =
        Boxes.column(
            "home-next",
            Words.label(line.next().sentence(), "semibold"),
            Words.label(line.next().detail(), "fine", "soft"));
    HBox.setHgrow(next, Priority.ALWAYS);
    tick.setId("tick-" + line.folder().getFileName());
    tick.setAccessibleText(words.text("window.home.tick", line.name()));
    tick.setOnMouseClicked(Event::consume); // a click on it does not open the row
    getChildren().addAll(tick, pair, name, path, next);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(line.said());
    setOnMouseClicked(
        event -> {
          requestFocus();
          if (event.getClickCount() == 1) {
            open.run();
          }
        });
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            event.consume();
            open.run();
          }
        });
  }

  /** Whether it is one of those that something is done with. */
  CheckBox tick() {
    return tick;
  }
}
