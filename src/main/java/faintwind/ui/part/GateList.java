package faintwind.ui.part;

import faintwind.ui.fold.ProseLink;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What keeps a gate shut: one line each, each a link to its step. */
public final class GateList extends VBox {

  /**
   * One thing that is missing.
   *
   * @param step id of the step that gives it
   * @param text what is missing, in words
   * @param mark its state
   */
  public record Missing(String step, String text, Mark mark) {}

  public GateList(String title, List<Missing> missing, Consumer<String> goToStep) {
    getStyleClass().add("gate-list");
    setId("gate");
    Label head = Words.label(title, "semibold", "mark-blocked");
    head.setWrapText(true);
    getChildren().add(head);
    for (Missing line : missing) {
      Hyperlink link = new ProseLink(line.text());
      link.setId("gate-" + line.step());
      link.setWrapText(true);
      HBox.setHgrow(link, Priority.ALWAYS);
      link.setOnAction(event -> goToStep.accept(line.step()));
      HBox row = Boxes.row("mark-label", new MarkShape(line.mark(), line.text()), link);
      getChildren().add(row);
    }
  }
}
