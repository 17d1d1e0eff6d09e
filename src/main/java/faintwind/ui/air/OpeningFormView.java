package faintwind.ui.air;

import faintwind.message.Field;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.Words;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;

/** The boxes of what an opening is. */
final class OpeningFormView extends FlowPane {
  private final Desk desk;
  private final OpeningForm form;

  OpeningFormView(Desk desk, OpeningForm form) {
    this.desk = desk;
    this.form = form;
    setId("opening-form");
    getStyleClass().add("plan-fields");
    for (Field field : form.fields()) {
      getChildren().add(field.words().isEmpty() ? number(field) : choice(field));
    }
  }

  private Node number(Field field) {
    String about = desk.text(field.nameKey());
    NumberField box = new NumberField(id(field), about, form.number(field.key()));
    Node named = Boxes.column("plan-field", Words.label(about), box);
    if (field.key().equals("height_mm")) {
      form.choice("shape")
          .addListener((property, was, now) -> Boxes.present(named, !form.isRound()));
      Boxes.present(named, !form.isRound());
    }
    return named;
  }

  private Node choice(Field field) {
    ComboBox<String> box = new FoldingChoice<>();
    box.setId(id(field));
    box.getItems().setAll(field.words());
    box.setConverter(Fields.shown(word -> desk.text("air." + field.id() + "." + word)));
    box.valueProperty().bindBidirectional(form.choice(field.key()));
    box.setAccessibleText(desk.text(field.nameKey()));
    return Boxes.column("plan-field", Words.label(desk.text(field.nameKey())), box);
  }

  private static String id(Field field) {
    return field.id().replace('.', '-').replace('_', '-');
  }
}
