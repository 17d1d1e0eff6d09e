package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The path drawn: stages as lengths of wire, under the open one its steps. */
final class PathView {
  private final Messages words;
  private final Consumer<String> open;
  private final VBox path = Boxes.column("path");
  private final VBox order = Boxes.column("path-order");
  private final VBox stageRows = Boxes.column("path-stages");
  private final HBox line = Boxes.row("path-line");

  /**
   * An empty path.
   *
   * @param open shows the step of that id
   */
  PathView(Messages words, Consumer<String> open) {
    this.words = words;
    this.open = open;
    path.setId("path");
    order.setId("path-order");
    path.getChildren().addAll(stageRows, order);
    line.setId("path-line");
  }

  Node path() {
    return path;
  }

  /** The path in one line: eight lengths and the open stage's name. */
  Node line() {
    return line;
  }

  void show(List<PathModel.StageLine> stages) {
    stageRows.getChildren().setAll(stages.stream().map(this::stage).toList());
    line.getChildren().clear();
    String here = "";
    for (PathModel.StageLine stage : stages) {
      String said = stage.title() + ": " + words.text(stage.mark().key());
      line.getChildren().add(new MarkShape(stage.mark(), said));
      if (stage.isOpen()) {
        long number = stage.steps().stream().takeWhile(s -> !s.here()).count() + 1;
        here = words.text("window.path.here", stage.title(), number, stage.steps().size());
      }
    }
    Label name = Words.label(here);
    HBox.setHgrow(name, Priority.ALWAYS);
    line.getChildren().add(name);
  }

  /** What can be done now and what waits, below the stages; nothing where all is done. */
  void showOrder(List<PathModel.OrderLine> lines) {
    order.getChildren().clear();
    Boxes.present(order, !lines.isEmpty());
    order.getChildren().add(Words.label(words.text("window.order"), "fine", "semibold"));
    for (PathModel.OrderLine shown : lines) {
      if (shown.id().isEmpty()) {
        order.getChildren().add(Words.label(shown.text(), "fine", "soft"));
        continue;
      }
      var link = Words.link("order-" + shown.id(), shown.text(), () -> open.accept(shown.id()));
      link.setWrapText(true);
      VBox said = new VBox(link);
      if (!shown.detail().isEmpty()) {
        said.getChildren().add(Words.label(shown.detail(), "fine", "soft"));
      }
      HBox.setHgrow(said, Priority.ALWAYS);
      HBox row =
          Boxes.row("order-row", new MarkShape(shown.mark(), words.text(shown.mark().key())), said);
      order.getChildren().add(row);
    }
  }

  private Node stage(PathModel.StageLine stage) {
    Row row = new Row(stage.title(), stage.mark(), stage.word(), stage.first());
    HBox head = button(row, "path-stage");
    VBox block = Boxes.column("path-block", head);
    if (!stage.note().isEmpty()) {
      block.getChildren().add(Words.label(stage.note(), "fine", "soft", "path-note"));
    }
    if (stage.isOpen()) {
      block.getStyleClass().add("open");
      for (PathModel.StepLine step : stage.steps()) {
        HBox button =
            button(new Row(step.title(), step.mark(), step.word(), step.id()), "path-step");
        if (step.here()) {
          button.getStyleClass().add("here");
        }
        block.getChildren().add(button);
      }
    }
    return block;
  }

  private record Row(String title, Mark mark, String word, String step) {}

  private HBox button(Row row, String styleClass) {
    String spoken = words.text(row.mark().key());
    Label title = Words.label(row.title(), row.mark() == Mark.READY ? "soft" : "path-title");
    Boxes.grow(title);
    Label word = Words.whole(row.word(), "fine", "semibold", row.mark().styleClass());
    HBox button =
        Boxes.row("path-row " + styleClass, new MarkShape(row.mark(), spoken), title, word);
    button.setId(styleClass + "-" + row.step());
    button.setFocusTraversable(true);
    button.setAccessibleRole(AccessibleRole.BUTTON);
    button.setAccessibleText(row.title() + ", " + spoken);
    button.setOnMouseClicked(event -> open.accept(row.step()));
    button.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            event.consume();
            open.accept(row.step());
          }
        });
    return button;
  }
}
