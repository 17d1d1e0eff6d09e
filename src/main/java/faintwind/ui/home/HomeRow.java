package faintwind.ui.home;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.home.HomeView.Length;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.PairDrawing;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * One instrument in the list: name, eight lengths from parts to use, what is next. The same nodes
 * show one instrument after another while the list is scrolled.
 */
final class HomeRow extends FoldingRow {
  private final Messages words;
  private final CheckBox tick = new CheckBox();
  private final Label name = Words.label("", "tell", "semibold");
  private final Label what = Words.label("", "fine", "soft");
  private final Label calibration = Words.label("", "fine", "soft");
  private final SpeedBand band = new SpeedBand();
  private final HBox lengths = Boxes.row("lengths");
  private final List<Length> drawn = new ArrayList<>();
  private final Label word = Words.whole("", "bold");
  private final Label note = Words.label("");
  private final Label notes = Words.label("", "fine", "soft");
  private final Label sentence = Words.label("", "semibold");
  private final Label detail = Words.label("", "fine", "soft");
  private Optional<HomeView.Line> shown = Optional.empty();

  HomeRow(Messages words) {
    super("row home-row");
    this.words = words;
    VBox next = Boxes.column("home-next", sentence, detail);
    HBox.setHgrow(next, Priority.ALWAYS);
    tick.setOnMouseClicked(Event::consume); // a click on it does not open the row
    tick.setFocusTraversable(false); // the space bar ticks the row that is selected
    getChildren()
        .addAll(
            tick,
            PairDrawing.metal(words.text("window.sign")),
            Boxes.column("home-name", name, what, calibration, band),
            Boxes.column("home-path", lengths, Boxes.row("home-said", word, note), notes),
            next);
  }

  /** Shows an instrument; nothing is laid out anew where it is the same. */
  void show(HomeView.Line line) {
    if (shown.filter(line::equals).isPresent()) {
      return;
    }
    shown = Optional.of(line);
    setId("instrument-" + line.folder().getFileName());
    tick.setId("tick-" + line.folder().getFileName());
    tick.setAccessibleText(words.text("window.home.tick", line.name()));
    name.setText(line.name());
    say(what, line.what());
    say(calibration, line.board().calibration());
    Boxes.present(band, line.board().range().isPresent());
    line.board().range().ifPresent(band::show);
    draw(line.lengths());
    word.setText(line.state().word());
    word.getStyleClass().removeIf(style -> style.startsWith("mark-"));
    word.getStyleClass().add(line.state().mark().styleClass());
    note.setText(line.state().note());
    say(notes, String.join("\n", line.board().notes()));
    sentence.setText(line.next().sentence());
    say(detail, line.next().detail());
  }

  private static void say(Label label, String text) {
    label.setText(text);
    Boxes.present(label, !text.isEmpty());
  }

  /** Draws only the marks that are others than before. */
  private void draw(List<Length> now) {
    for (int i = 0; i < now.size(); i++) {
      if (i >= drawn.size() || !drawn.get(i).equals(now.get(i))) {
        String said = now.get(i).stage() + ": " + words.text(now.get(i).mark().key());
        MarkShape mark = new MarkShape(now.get(i).mark(), said, 0.6);
        Tooltip.install(mark, new Tooltip(said));
        if (i < drawn.size()) {
          lengths.getChildren().set(i, mark);
        } else {
          lengths.getChildren().add(mark);
        }
      }
    }
    if (now.size() < drawn.size()) {
      lengths.getChildren().remove(now.size(), drawn.size());
    }
    drawn.clear();
    drawn.addAll(now);
  }

  /** Whether it is one of those that something is done with. */
  CheckBox tick() {
    return tick;
  }
}
