package faintwind.ui.design;

import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Rows of a form: a name beside a number, a name above a list whose entries are long. */
final class DesignRows {
  private DesignRows() {}

  /** A name and a field for a number at its right. */
  static Node number(String id, String name, Node field) {
    Label label = Words.label(name, "choice-name");
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    label.setMinWidth(0);
    HBox row = new HBox(label, field);
    row.setId(id + "-row");
    row.getStyleClass().addAll("choice-row", "row");
    return row;
  }

  /** A name with a list under it, as wide as the form, so that no entry is cut. */
  static Node pick(String name, ComboBox<DesignChoices.Option> combo) {
    combo.setAccessibleText(name);
    combo.setMaxWidth(Double.MAX_VALUE);
    combo.setMinWidth(0);
    return Boxes.column("pick-row row", Words.label(name), combo);
  }

  /** Shows what can be picked and what is. */
  static void choose(
      ComboBox<DesignChoices.Option> combo, List<DesignChoices.Option> options, String id) {
    if (!combo.getItems().equals(options)) {
      combo.getItems().setAll(options);
    }
    options.stream()
        .filter(o -> o.id().equals(id))
        .findFirst()
        .ifPresent(
            o -> {
              combo.setValue(o);
              combo.setTooltip(new Tooltip(o.name()));
            });
  }
}
