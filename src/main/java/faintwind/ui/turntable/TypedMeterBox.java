package faintwind.ui.turntable;

import faintwind.message.Typeset;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The place where readings of a plain meter are typed while the arm turns. */
final class TypedMeterBox extends VBox {

  TypedMeterBox(Desk desk, TypedMeter meter) {
    setId("live-meter");
    getStyleClass().add("data-body");
    Label asked = Words.label("", "semibold");
    asked.textProperty().bind(meter.asked().map(Typeset::of));
    Label wrong = Words.label("", "fine", "mark-blocked");
    TextField typed = new TextField();
    typed.setId("live-typed");
    typed.setPrefColumnCount(8);
    typed.setMaxWidth(USE_PREF_SIZE);
    typed.setAccessibleText(desk.text("listen.typed-label"));
    typed.setPromptText(desk.text("listen.typed-label"));
    typed.setOnAction(
        event -> {
          wrong.setText(meter.enter(typed.getText()));
          typed.clear();
        });
    getChildren().addAll(Boxes.row("live-head", typed, asked), wrong);
  }
}
