package faintwind.ui.design;

import faintwind.message.Messages;
import faintwind.physics.part.Catalogue;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
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
    box.getStyleClass().add("design-form");
    box.getChildren().add(Words.label(words.text("design.choices"), "tell", "semibold"));
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
        pick(DesignChoices.Pick.SERIES),
        number(DesignChoices.Figure.TOLERANCE),
        pick(DesignChoices.Pick.RESISTOR),
        pick(DesignChoices.Pick.LEAD),
        number(DesignChoices.Figure.LEAD_LENGTH),
        pick(DesignChoices.Pick.REGULATOR),
        pick(DesignChoices.Pick.BATTERY),
        pick(DesignChoices.Pick.CABLE),
        number(DesignChoices.Figure.CABLE_LENGTH));
    group(
        "signal",
        pick(DesignChoices.Pick.THERMOCOUPLE),
        number(DesignChoices.Figure.GAUGE),
        pick(DesignChoices.Pick.LOGGER),
        number(DesignChoices.Figure.GAIN));
    group(
        "room",
        pick(DesignChoices.Pick.PLACE),
        number(DesignChoices.Figure.CONTACT),
        number(DesignChoices.Figure.AIR),
        number(DesignChoices.Figure.HUMIDITY),
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
    return DesignRows.pick(words.text("design.choice." + name), combo);
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
    return DesignRows.number("design-" + name.replace('_', '-'), label, field);
  }

  /** Shows what can be picked and what is. */
  void fill(Catalogue parts) {
    filling = true;
    combos.forEach(
        (pick, combo) ->
            DesignRows.choose(
                combo, model.choices().options(pick, parts), model.choices().pick(pick).get()));
    filling = false;
  }
}
