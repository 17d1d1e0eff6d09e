package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.ui.fold.Heads;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.ReadingRow;
import faintwind.ui.part.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The rows of readings on a step's sheet; they stay while the step stays. */
final class StepRows {
  private final StepReadings typing;
  private final Messages words;
  private final VBox box;
  private final Consumer<StepView.ReadingLine> focused;
  private final Map<String, ReadingRow> rows = new LinkedHashMap<>();

  /**
   * No rows yet.
   *
   * @param box where the rows stand
   * @param focused told which reading got the focus
   */
  StepRows(StepModel model, Messages words, VBox box, Consumer<StepView.ReadingLine> focused) {
    typing = new StepReadings(model, words);
    this.words = words;
    this.box = box;
    this.focused = focused;
  }

  /** Makes the rows of another step. */
  void begin(StepView view, Heads heads) {
    rows.clear();
    box.getChildren().clear();
    typing.begin();
    for (StepView.ReadingLine line : view.readings()) {
      NumberModel number = typing.add(line);
      ReadingRow row = new ReadingRow(line.id(), line.label(), line.expected(), number, words);
      rows.put(line.id(), row);
      text(row)
          .focusedProperty()
          .addListener(
              (property, was, now) -> {
                if (now) {
                  focused.accept(line);
                }
              });
      box.getChildren().add(row);
    }
    heads.over(() -> List.copyOf(rows.values()));
  }

  /** Shows verdicts and earlier entries; what is being typed is kept. */
  void show(StepView view) {
    for (StepView.ReadingLine line : view.readings()) {
      typing.show(line);
      ReadingRow row = rows.get(line.id());
      if (row != null) {
        row.show(line.answer().mark(), line.answer().verdict(), typing.keptWords(line));
        row.showEarlier(line.earlier().stream().map(StepRows::earlier).toList());
      }
    }
  }

  private static Node earlier(StepView.Earlier earlier) {
    if (earlier.struck().isEmpty()) {
      return Words.label(earlier.text(), "fine", "soft");
    }
    return Boxes.column(
        "earlier-struck",
        Words.label(earlier.text(), "fine", "struck"),
        Words.label(earlier.struck(), "fine", "soft"));
  }

  /** The first box that is empty, else the first. */
  Optional<Node> first() {
    return rows.values().stream()
        .filter(row -> text(row).getText().isEmpty())
        .findFirst()
        .or(() -> rows.values().stream().findFirst())
        .map(StepRows::text);
  }

  void focus(String reading) {
    Optional.ofNullable(rows.get(reading))
        .map(StepRows::text)
        .ifPresent(
            text -> {
              text.requestFocus();
              text.selectAll();
            });
  }

  /** The next entry of the reading in focus strikes the one that counts. */
  void correctFocused() {
    rows.forEach(
        (id, row) -> {
          if (text(row).isFocused()) {
            typing.beginCorrection(id);
          }
        });
  }

  private static TextField text(ReadingRow row) {
    return row.field().text();
  }
}
