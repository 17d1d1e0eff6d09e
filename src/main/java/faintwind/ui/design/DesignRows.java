package faintwind.ui.design;

import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Words;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Rows of a form: a name beside a number. */
final class DesignRows {
  private DesignRows() {}

  /** A name and a field for a number at its right. */
  static Node number(String id, String name, Node field) {
    Label label = Words.label(name, "choice-name");
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox row = Boxes.row("choice-row row", label, field);
    row.setId(id + "-row");
    return row;
  }

  /** The same with a field that is described by the same name. */
  static Node number(String id, String name, NumberModel number) {
    return number(id, name, new NumberField(id, name, number));
  }
}
