package faintwind.ui.design;

import faintwind.message.Messages;
import faintwind.physics.choice.DesignField;
import faintwind.physics.choice.PartFields;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Words;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The choices of a design in groups, each a list to pick from or a number to type. */
final class DesignChoicesView {
  /** Groups of the file that share one in the form. */
  private static final Map<String, String> GROUPS =
      Map.of("supply", "heater", "sense", "signal", "air", "room", "use", "room");

  private final Messages words;
  private final DesignModel model;
  private final VBox box = Boxes.column("design-form");
  private final DesignPicks<DesignField> picks = new DesignPicks<>();
  private final Map<DesignField, Node> rows = new EnumMap<>(DesignField.class);

  DesignChoicesView(Messages words, DesignModel model) {
    this.words = words;
    this.model = model;
    box.setId("design-choices");
    box.getChildren().add(Words.label(words.text("design.choices"), "tell", "semibold"));
    Map<String, VBox> groups = new LinkedHashMap<>();
    for (DesignField each : DesignChoices.form()) {
      VBox group =
          groups.computeIfAbsent(GROUPS.getOrDefault(group(each), group(each)), this::group);
      Node row = each.field().range().isPresent() ? number(each) : pick(each);
      row.managedProperty().bind(row.visibleProperty());
      rows.put(each, row);
      group.getChildren().add(row);
    }
    box.getChildren().addAll(groups.values());
  }

  private static String group(DesignField field) {
    String id = field.field().id();
    return id.substring(0, id.indexOf('.'));
  }

  Node node() {
    return box;
  }

  private VBox group(String key) {
    Label head = Words.label(words.text("design.group." + key), "column-head", "choice-head");
    head.setMaxWidth(Double.MAX_VALUE);
    return Boxes.column("choice-group", head);
  }

  private static String id(DesignField field) {
    return "design-" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Node pick(DesignField field) {
    return picks.row(
        field,
        id(field),
        words.text(field.field().nameKey()),
        picked -> {
          if (!picked.equals(model.choices().pick(field).get())) {
            model.choices().pick(field).set(picked);
            model.said(field);
          }
        });
  }

  private Node number(DesignField field) {
    String label = words.text(field.field().nameKey());
    NumberModel number = model.choices().number(field);
    number.judged().addListener((property, was, now) -> model.said(field));
    return DesignRows.number(id(field), label, number);
  }

  /** Shows what can be picked and what is. */
  void fill(Catalogue parts) {
    picks.show(
        field -> model.choices().options(field, parts), field -> model.choices().pick(field).get());
  }

  /** Shows the rows that a design has something to say of. */
  void fill(Design design) {
    rows.forEach((field, row) -> row.setVisible(PartFields.applies(field, design)));
  }
}
