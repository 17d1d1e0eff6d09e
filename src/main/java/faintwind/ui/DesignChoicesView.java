package faintwind.ui;

import faintwind.message.Messages;
import faintwind.physics.design.Catalogue;
import faintwind.ui.part.NumberField;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The choices of a design in groups, each a list to pick from or a number to type. */
final class DesignChoicesView {
  private final Messages words;
  private final DesignModel model;
  private final VBox box = new VBox();
  private final Map<DesignChoices.Pick, ComboBox<DesignChoices.Option>> combos =
      new EnumMap<>(DesignChoices.Pick.class);
  private boolean filling;

  DesignChoicesView(Messages words, DesignModel model) {
    this.words = words;
    this.model = model;
    box.setId("design-choices");
    box.getStyleClass().addAll("path", "wide-path", "design-choices");
    box.getChildren().add(Rows.words(words.text("design.choices"), "tell", "semibold"));
    group(
        "ball",
        pick(DesignChoices.Pick.METAL),
        number(DesignChoices.Figure.DIAMETER),
        pick(DesignChoices.Pick.COAT),
        number(DesignChoices.Figure.BORE));
    group(
        "heater",
        number(DesignChoices.Figure.VOLTAGE),
        number(DesignChoices.Figure.POWER),
        pick(DesignChoices.Pick.RESISTOR),
        pick(DesignChoices.Pick.LEAD),
        number(DesignChoices.Figure.LEAD_LENGTH),
        pick(DesignChoices.Pick.REGULATOR),
        pick(DesignChoices.Pick.BATTERY));
    group(
        "signal",
        pick(DesignChoices.Pick.THERMOCOUPLE),
        number(DesignChoices.Figure.GAUGE),
        pick(DesignChoices.Pick.LOGGER));
    group(
        "room",
        pick(DesignChoices.Pick.PLACE),
        number(DesignChoices.Figure.AIR),
        number(DesignChoices.Figure.ALTITUDE),
        number(DesignChoices.Figure.SLOWEST));
  }

  Node node() {
    return box;
  }

  private void group(String key, Node... rows) {
    Label head = new Label(words.text("design.group." + key));
    head.getStyleClass().addAll("column-head", "choice-head");
    head.setMaxWidth(Double.MAX_VALUE);
    VBox group = new VBox(head);
    group.getStyleClass().add("choice-group");
    group.getChildren().addAll(List.of(rows));
    box.getChildren().add(group);
  }

  private Node pick(DesignChoices.Pick pick) {
    String name = pick.name().toLowerCase(Locale.ROOT);
    ComboBox<DesignChoices.Option> combo = new ComboBox<>();
    combo.setId("design-" + name);
    combo.setAccessibleText(words.text("design.choice." + name));
    combo
        .valueProperty()
        .addListener(
            (property, was, now) -> {
              if (!filling && now != null && !now.id().equals(model.choices().pick(pick).get())) {
                model.choices().pick(pick).set(now.id());
                model.picked(pick);
              }
            });
    combos.put(pick, combo);
    return row(words.text("design.choice." + name), combo);
  }

  private Node number(DesignChoices.Figure number) {
    String name = number.name().toLowerCase(Locale.ROOT);
    String label = words.text("design.choice." + name);
    NumberField field =
        new NumberField("design-" + name.replace('_', '-'), label, model.choices().number(number));
    model
        .choices()
        .number(number)
        .judged()
        .addListener((property, was, now) -> model.typed(number));
    return row(label, field);
  }

  private static Node row(String name, Node control) {
    Label label = Rows.words(name, "choice-name");
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox row = new HBox(label, control);
    row.getStyleClass().addAll("choice-row", "row");
    return row;
  }

  /** Shows what can be picked and what is. */
  void fill(Catalogue parts) {
    filling = true;
    combos.forEach(
        (pick, combo) -> {
          List<DesignChoices.Option> options = model.choices().options(pick, parts);
          if (!combo.getItems().equals(options)) {
            combo.getItems().setAll(options);
          }
          options.stream()
              .filter(o -> o.id().equals(model.choices().pick(pick).get()))
              .findFirst()
              .ifPresent(combo::setValue);
        });
    filling = false;
  }
}
