package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.make.StepView.MeterFace;
import faintwind.ui.make.StepView.MeterKind;
import faintwind.ui.part.Words;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The margin's part on the meter: which one is used, and what it cannot show. */
final class MeterCard extends VBox {

  MeterCard(MeterFace face, Messages words, Consumer<String> choose) {
    getStyleClass().add("aside-part");
    setId("meter");
    ComboBox<MeterKind> combo = new FoldingChoice<>();
    combo.setId("meter-choice");
    combo.setAccessibleText(words.text("window.meter.title"));
    combo.setMaxWidth(Double.MAX_VALUE);
    combo.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(MeterKind option) {
            return option == null ? "" : option.name();
          }

          @Override
          public MeterKind fromString(String text) {
            return combo.getValue();
          }
        });
    combo.getItems().setAll(face.options());
    face.options().stream()
        .filter(option -> option.id().equals(face.chosen()))
        .findFirst()
        .ifPresent(combo::setValue);
    combo
        .valueProperty()
        .addListener(
            (property, was, now) -> {
              if (now != null && !now.id().equals(face.chosen())) {
                choose.accept(now.id());
              }
            });
    getChildren().addAll(Words.label(words.text("window.meter.title"), "tell", "semibold"), combo);
    face.lines().forEach(line -> getChildren().add(Words.label(line, "fine")));
  }
}
