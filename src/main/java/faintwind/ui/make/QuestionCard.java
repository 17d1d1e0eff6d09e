package faintwind.ui.make;

import faintwind.message.Typeset;
import faintwind.ui.part.Words;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;

/** A question with its answers; an answer that ends the way says why, without a way past it. */
final class QuestionCard extends VBox {

  QuestionCard(StepView.Asked asked, StepModel model) {
    getStyleClass().addAll("question", "row");
    setId("question-" + asked.id());
    getChildren().add(Words.label(asked.text(), "tell", "medium"));
    ToggleGroup group = new ToggleGroup();
    for (StepView.Asked.Option option : asked.choices()) {
      RadioButton button = new RadioButton(Typeset.of(option.text()));
      button.setId("answer-" + asked.id() + "-" + option.id());
      button.setWrapText(true);
      button.setToggleGroup(group);
      button.setSelected(option.id().equals(asked.chosen()));
      button.setAccessibleText(asked.text() + " " + option.text());
      button.setOnAction(event -> model.answer(asked.id(), option.id()));
      getChildren().add(button);
    }
    if (!asked.stop().isEmpty()) {
      getChildren().add(Words.label(asked.stop(), "ends-here", "semibold"));
    }
  }
}
