package faintwind.ui.part;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingChoice;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Small boxes with their names above them, several in a line. */
public final class Fields {
  private Fields() {}

  /** A box for a text. */
  public static Node text(String id, String key, StringProperty text, int columns, Messages words) {
    return named(key, field(id, key, text, columns, words), words);
  }

  /** The box itself, without its name above it. */
  public static TextField field(
      String id, String key, StringProperty text, int columns, Messages words) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(columns);
    field.setAccessibleText(words.text(key));
    field.textProperty().bindBidirectional(text);
    return field;
  }

  /** A box with its name above it. */
  public static Node named(String key, Node field, Messages words) {
    Label label = Words.label(words.text(key), "fine", "soft");
    label.setLabelFor(field);
    return new VBox(label, field);
  }

  /** A choice of one. */
  public static <T> ComboBox<T> choice(
      String id, List<T> items, Function<T, String> text, ObjectProperty<T> value) {
    ComboBox<T> combo = new FoldingChoice<>();
    combo.getItems().setAll(items);
    combo.setId(id);
    combo.setConverter(shown(text));
    combo.valueProperty().bindBidirectional(value);
    return combo;
  }

  /** Boxes in a line, or in more where it is narrow. */
  public static HBox line(Node... nodes) {
    return Boxes.row("import-row", nodes);
  }

  /** Shows a value as words. */
  public static <T> StringConverter<T> shown(Function<T, String> text) {
    return new StringConverter<>() {
      @Override
      public String toString(T value) {
        return value == null ? "" : text.apply(value);
      }

      @Override
      public T fromString(String typed) {
        throw new UnsupportedOperationException("not editable");
      }
    };
  }
}
