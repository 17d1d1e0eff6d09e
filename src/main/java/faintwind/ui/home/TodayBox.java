package faintwind.ui.home;

import faintwind.message.Messages;
import faintwind.message.Typeset;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The time there is, and what fits into it. */
final class TodayBox extends VBox {
  private static final int DIGITS = 3;

  private final Messages words;
  private final TodayModel model;
  private final Consumer<Path> open;
  private final VBox shown = Boxes.column("aside-part");

  TodayBox(Messages words, TodayModel model, Consumer<Path> open) {
    this.words = words;
    this.model = model;
    this.open = open;
    getStyleClass().add("aside-part");
    setId("today");
    TextField minutes = new TextField();
    minutes.setId("today-minutes");
    minutes.getStyleClass().add("optional");
    minutes.setPrefColumnCount(DIGITS);
    minutes.setAccessibleText(words.text("today.have") + " " + words.text("today.minutes"));
    minutes.textProperty().bindBidirectional(model.typed());
    minutes.setOnAction(event -> model.ask());
    FlowPane row = new FlowPane(8, 8);
    row.getStyleClass().add("margin-buttons");
    row.getChildren()
        .addAll(
            Words.whole(words.text("today.have")),
            minutes,
            Words.whole(words.text("today.minutes")),
            Words.button("today-ask", words.text("today.ask"), model::ask));
    shown.setId("today-plan");
    Label remark = Words.label("", "soft");
    remark.textProperty().bind(model.remark().map(Typeset::of));
    model.remark().addListener((p, was, now) -> Boxes.present(remark, !now.isEmpty()));
    Boxes.present(remark, false);
    getChildren().addAll(row, shown, remark);
    model.plan().addListener((property, was, now) -> show(now));
  }

  private void show(Optional<TodayModel.Plan> now) {
    shown.getChildren().clear();
    if (now.isEmpty()) {
      return;
    }
    TodayModel.Plan plan = now.get();
    shown.getChildren().add(Words.label(plan.title(), "semibold"));
    for (int i = 0; i < plan.steps().size(); i++) {
      TodayModel.Line line = plan.steps().get(i);
      shown
          .getChildren()
          .add(Words.link("today-step-" + i, line.text(), TodayModel.opening(line, open)));
    }
    plan.more().forEach(text -> shown.getChildren().add(Words.label(text, "soft")));
    if (!plan.steps().isEmpty()) {
      shown.getChildren().add(Words.link("today-paper", words.text("today.paper"), model::print));
    }
  }
}
