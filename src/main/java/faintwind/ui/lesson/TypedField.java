package faintwind.ui.lesson;

import faintwind.ui.lesson.TypedBox.Said;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A box with its name above it, and below it why it is asked for and what was understood. */
final class TypedField extends VBox {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

  private static final int DAY_COLUMNS = 16;
  private static final int NUMBER_COLUMNS = 4;

  private final TextField field;

  /**
   * A field on a box of a form.
   *
   * @param about its name
   * @param field takes the typing; a password's shows none of it
   * @param left told when somebody goes on from it
   */
  TypedField(String about, TextField field, TypedBox box, Runnable left) {
    this.field = field;
    getStyleClass().add("typed-box");
    Label name = Words.label(about, "semibold");
    name.setLabelFor(field);
    bind(field, about, box, left);
    getChildren().addAll(name, field, said(field, box.said()));
  }

  /** Says why it is asked for. */
  TypedField why(String why) {
    getChildren().add(2, Words.label(why, "fine", "soft"));
    return this;
  }

  /** It may stay empty. */
  TypedField optional() {
    field.getStyleClass().add("optional");
    return this;
  }

  /** A box for a text. */
  static TextField line(String id, int columns) {
    return dressed(new TextField(), id, columns);
  }

  static <F extends TextField> F dressed(F field, String id, int columns) {
    field.setId(id);
    field.setPrefColumnCount(columns);
    field.setMaxWidth(USE_PREF_SIZE);
    return field;
  }

  /** A box for a day and its time, which are never cut. */
  static TextField day(String id) {
    return whole(id, DAY_COLUMNS);
  }

  /** A box for a number, which is never cut. */
  static TextField counted(String id) {
    return whole(id, NUMBER_COLUMNS);
  }

  private static TextField whole(String id, int columns) {
    TextField field = line(id, columns);
    field.setMinWidth(USE_PREF_SIZE);
    return field;
  }

  /** Joins a field to a box of a form. */
  static void bind(TextField field, String about, TypedBox box, Runnable left) {
    field.textProperty().bindBidirectional(box.typed());
    field
        .focusedProperty()
        .addListener(
            (property, was, now) -> {
              if (!now) {
                left.run();
              }
            });
    box.said().addListener((property, was, now) -> mark(field, about, now));
    mark(field, about, box.said().get());
  }

  private static void mark(TextField field, String about, Said said) {
    field.pseudoClassStateChanged(REFUSED, said.refused());
    field.setAccessibleText(said.text().isEmpty() ? about : about + ", " + said.text());
  }

  /** What is said below a box; takes no room while there is nothing. */
  static Label said(TextField field, ObservableValue<Said> said) {
    return said(field.getId(), said);
  }

  /** The same below something else, by its id. */
  static Label said(String id, ObservableValue<Said> said) {
    Label label = Words.label("", "fine", "soft", "understood");
    label.setId(id + "-said");
    said.addListener((property, was, now) -> show(label, now));
    show(label, said.getValue());
    return label;
  }

  private static void show(Label label, Said said) {
    label.setText(said.text());
    label.pseudoClassStateChanged(REFUSED, said.refused());
    Boxes.present(label, !said.text().isEmpty());
  }
}
