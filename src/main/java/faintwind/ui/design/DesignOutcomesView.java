package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What follows from a design: the outcomes that decide, and all others on demand. */
final class DesignOutcomesView {
  private final Desk desk;
  private final DesignWords said;
  private final VBox outcomes = Boxes.column("outcomes");
  private final VBox rest = Boxes.column("outcomes");
  private final VBox box = new VBox();

  DesignOutcomesView(Desk desk) {
    this.desk = desk;
    said = new DesignWords(desk.words());
    outcomes.setId("design-outcomes");
    rest.setId("design-rest");
    rest.setVisible(false);
    rest.setManaged(false);
    Hyperlink all = new ProseLink(desk.words().text("design.all"));
    all.setId("design-all");
    all.setOnAction(
        event -> {
          rest.setVisible(!rest.isVisible());
          rest.setManaged(rest.isVisible());
        });
    box.getChildren().addAll(outcomes, all, rest);
    box.setId("design-outcomes-page");
  }

  Node node() {
    return box;
  }

  void fill(Sized worked) {
    outcomes.getChildren().setAll(said.first(worked).stream().map(o -> row(o, worked)).toList());
    rest.getChildren().setAll(said.rest(worked).stream().map(o -> row(o, worked)).toList());
  }

  private Node row(DesignWords.OutcomeLine outcome, Sized worked) {
    VBox name = new VBox(Words.label(outcome.name()));
    if (!outcome.plain().isEmpty()) {
      name.getChildren().add(Words.label(outcome.plain(), "fine", "soft"));
    }
    HBox.setHgrow(name, Priority.ALWAYS);
    VBox value =
        new VBox(
            Words.whole(outcome.value(), "outcome-value"),
            Words.whole(outcome.range(), "fine", "soft"));
    value.getStyleClass().add("outcome-numbers");
    Mark mark = outcome.judged().mark();
    Label verdict = Words.whole(outcome.judged().word(), "semibold", mark.styleClass());
    WhyLink why =
        new WhyLink(
            "why-" + outcome.id(),
            outcome.name(),
            () -> said.why(outcome.id(), worked),
            desk.notes(),
            desk.words());
    VBox judged = Boxes.column("outcome-judged", verdict, why);
    MarkShape shape = new MarkShape(mark, outcome.judged().word());
    shape.setVisible(mark != Mark.READY);
    HBox line = Boxes.row("outcome-line", shape, name, value, judged);
    VBox row = Boxes.column("outcome row", line);
    row.setId("outcome-" + outcome.id());
    if (!outcome.judged().reason().isEmpty()) {
      row.getStyleClass().add(mark == Mark.BLOCKED ? "stop" : "improve");
      row.getChildren().add(Words.label(outcome.judged().reason(), "outcome-reason"));
    }
    return row;
  }
}
