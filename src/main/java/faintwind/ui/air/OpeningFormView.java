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
import javafx.scene.control.Label;
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
    Label name = Words.label(about);
    String styles = field.required() || isHeight(field) ? "plan-field" : "plan-field optional";
    Node named = Boxes.column(styles, name, box);
    if (isHeight(field) || field.key().equals("width_mm")) {
      form.choice("shape").addListener((property, was, now) -> size(field, name, named));
      size(field, name, named);
    }
    return named;
  }

  private static boolean isHeight(Field field) {
    return field.key().equals("height_mm");
  }

  /** A size has the name that suits the shape, such as diameter; a round one has no height. */
  private void size(Field field, Label name, Node named) {
    boolean height = isHeight(field);
    Boxes.present(named, !(height && form.isRound()));
    if (!(height && form.isRound())) {
      String side = height ? "height" : "width";
      name.setText(desk.text("air.opening." + side + "." + form.choice("shape").get()));
    }
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
