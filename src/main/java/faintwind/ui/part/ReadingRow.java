package faintwind.ui.part;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.fold.Prose;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One reading: what, expected band, typed, verdict. Tab walks down the boxes. */
public final class ReadingRow extends FoldingRow {
  private final NumberField field;
  private final MarkLabel verdict;
  private final Label kept = new Prose();
  private final VBox earlier = new VBox();

  /**
   * A row without an entry.
   *
   * @param id id of the reading; the box has the id "reading-" and this
   * @param label what is measured
   * @param expected what to expect, in words
   * @param number the box's model
   */
  public ReadingRow(String id, String label, String expected, NumberModel number, Messages words) {
    super("row reading-row");
    setId("row-" + id);
    Label what = Words.label(label, "tell", "medium");
    Label band = Words.label(expected, "reading-expected");
    kept.getStyleClass().addAll("fine", "soft");
    VBox left = Boxes.column("reading-what", what, kept, earlier);
    HBox.setHgrow(left, Priority.ALWAYS);
    verdict = new MarkLabel(Mark.READY, "");
    verdict.getStyleClass().add("reading-verdict");
    verdict.setVisible(false);
    String about = words.text("window.reading.about", label, expected);
    field = new NumberField("reading-" + id, about, number).with(verdict);
    field.getStyleClass().add("reading-field");
    getChildren().addAll(left, band, field);
  }

  /** Shows the verdict and when the entry was kept; both empty while there is none. */
  public void show(Mark mark, String word, String keptWords) {
    verdict.setVisible(!word.isEmpty());
    verdict.show(mark, word);
    kept.setText(keptWords);
    Boxes.present(kept, !keptWords.isEmpty());
  }

  /** Shows the entries that do not count any more. */
  public void showEarlier(List<Node> entries) {
    earlier.getChildren().setAll(entries);
    Boxes.present(earlier, !entries.isEmpty());
  }

  public NumberField field() {
    return field;
  }
}
