package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.physics.plating.Deposit;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkLabel;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import java.util.Locale;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The plating calculator on the sheet: fields above, what follows below, all live. */
final class PlatingView extends VBox {
  private final PlatingModel model;
  private final Desk desk;
  private final VBox outcomes = new VBox();

  PlatingView(PlatingModel model, Desk desk) {
    this.model = model;
    this.desk = desk;
    Messages words = desk.words();
    setId("plating-calculator");
    getStyleClass().add("calculator");
    getChildren().add(Words.label(words.text("window.plating.title"), "tell", "semibold"));
    getChildren().add(metals(words));
    FlowPane fields = new FlowPane();
    fields.getStyleClass().add("calculator-fields");
    for (PlatingModel.Field field : model.fields()) {
      String name = words.text("window.plating.field." + field.id());
      VBox box =
          Boxes.column(
              "calculator-field",
              Words.label(name, "fine", "soft"),
              new NumberField("plating-" + field.id(), name, field.number()));
      fields.getChildren().add(box);
    }
    outcomes.setId("plating-outcomes");
    getChildren().addAll(fields, outcomes);
    model.outcomes().addListener((property, was, now) -> show());
    show();
  }

  private FlowPane metals(Messages words) {
    ToggleGroup group = new ToggleGroup();
    FlowPane row = new FlowPane(20, 8);
    for (Deposit deposit : Deposit.values()) {
      String id = deposit.name().toLowerCase(Locale.ROOT).replace('_', '-');
      RadioButton button = new RadioButton(words.text("window.plating.metal." + id));
      button.setId("plating-metal-" + id);
      button.setToggleGroup(group);
      button.setSelected(model.deposit().get() == deposit);
      button.setOnAction(event -> model.deposit().set(deposit));
      row.getChildren().add(button);
    }
    return row;
  }

  private void show() {
    outcomes.getChildren().clear();
    if (model.outcomes().get().isEmpty()) {
      outcomes.getChildren().add(Words.label(desk.text("window.plating.not-yet"), "soft"));
    }
    model.outcomes().get().forEach(outcome -> outcomes.getChildren().add(row(outcome)));
  }

  private HBox row(PlatingModel.Outcome outcome) {
    VBox said = new VBox(Words.label(outcome.what(), "fine", "soft"));
    var value = Words.label(outcome.value(), "medium");
    value.setId("plating-" + outcome.id());
    said.getChildren().add(value);
    if (!outcome.said().isEmpty()) {
      said.getChildren().add(Words.label(outcome.said(), "fine"));
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox line = Boxes.row("row card-row", said);
    if (outcome.mark() != Mark.READY) {
      line.getChildren().add(new MarkLabel(outcome.mark(), verdict(outcome.mark())));
    }
    line.getChildren()
        .add(
            new WhyLink(
                "plating-why-" + outcome.id(),
                outcome.what(),
                outcome::why,
                desk.notes(),
                desk.words()));
    return line;
  }

  private String verdict(Mark mark) {
    String word =
        switch (mark) {
          case DONE -> "good";
          case BLOCKED -> "stop";
          default -> "doubtful";
        };
    return desk.text("window.verdict." + word);
  }
}
