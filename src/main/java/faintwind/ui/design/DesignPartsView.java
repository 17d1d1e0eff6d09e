package faintwind.ui.design;

import faintwind.job.design.PartsList;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.advice.PartNeed;
import faintwind.ui.fold.Prose;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What to buy: one row a part with what to look for, a price to type, totals. */
final class DesignPartsView {
  private final Messages words;
  private final DesignModel model;
  private final VBox form = Boxes.column("design-form");
  private final VBox box = Boxes.column("design-page");
  private final VBox rows = new VBox();
  private final Label cost = Words.label("", "semibold", "tell");
  private final Map<String, Row> known = new HashMap<>();
  private final Node heads;

  /** A row that stays while it is typed into. */
  private record Row(VBox node, Label what, Label amount, Label total) {}

  DesignPartsView(Desk desk, DesignModel model) {
    this.model = model;
    words = desk.words();
    box.setId("design-parts-page");
    cost.setId("parts-cost");
    box.getChildren()
        .addAll(rows, cost, Words.label(words.text("parts.page.spares"), "fine", "soft"));
    heads = heads();
    buildForm();
    model.partsList().list().addListener((property, was, now) -> fill(now));
    fill(model.partsList().list().get());
  }

  Node form() {
    return form;
  }

  Node node() {
    return box;
  }

  private void buildForm() {
    form.setId("parts-form");
    String count = words.text("design.parts.instruments");
    TextField currency = new TextField();
    currency.setId("parts-currency");
    currency.textProperty().bindBidirectional(model.partsList().currency());
    currency.setOnAction(event -> model.partsList().currencyTyped());
    currency
        .focusedProperty()
        .addListener(
            (property, was, now) -> {
              if (!now) {
                model.partsList().currencyTyped();
              }
            });
    currency.setAccessibleText(words.text("design.parts.currency"));
    form.getChildren()
        .addAll(
            Words.label(words.text("design.parts"), "tell", "semibold"),
            DesignRows.number("parts-instruments", count, model.partsList().instruments()),
            DesignRows.number("parts-currency", words.text("design.parts.currency"), currency),
            Words.label(words.text("design.parts.prices"), "fine", "soft"));
  }

  private void fill(Optional<PartsList> list) {
    if (list.isEmpty()) {
      rows.getChildren().setAll(Rows.soft(words.text("design.parts.how-many")));
      cost.setText("");
      return;
    }
    List<Node> nodes = new ArrayList<>();
    nodes.add(heads);
    list.get().lines().forEach(line -> nodes.add(row(line)));
    if (!rows.getChildren().equals(nodes)) {
      rows.getChildren().setAll(nodes);
    }
    cost.setText(list.get().costWords());
  }

  private Node row(PartsList.Line line) {
    Row row = known.computeIfAbsent(line.need().key(), key -> newRow(key, line));
    String what = line.what();
    row.what().setText(line.tolerance().isEmpty() ? what : what + "; " + line.tolerance());
    row.amount().setText(amount(line));
    row.total()
        .setText(
            line.total().isPresent()
                ? words.text("design.parts.total", PartsList.money(line.total().getAsDouble()))
                : "");
    return row.node();
  }

  private String amount(PartsList.Line line) {
    boolean metres = line.need().kind().count() == PartNeed.Count.METRES;
    String buy = Numerals.digits(line.need().buy()) + (metres ? " " + line.unit() : "");
    return line.need().spare() == 0
        ? buy
        : words.text(
            "design.parts.amount",
            buy,
            Numerals.digits(line.need().needed()),
            Numerals.digits(line.need().spare()));
  }

  /** Heads over the columns that are not plain by themselves. */
  private Node heads() {
    Label part = Words.label(words.text("parts.head.what"), "column-head");
    HBox.setHgrow(part, Priority.ALWAYS);
    part.setMaxWidth(Double.MAX_VALUE);
    Label buy = Words.label(words.text("parts.head.buy"), "column-head", "part-amount");
    Label price = Words.label(words.text("parts.head.price"), "column-head", "price-field");
    return Boxes.row("part-line", part, buy, price);
  }

  private Row newRow(String key, PartsList.Line line) {
    NumberModel price = new NumberModel("", words);
    line.price().ifPresent(p -> price.set(PartsList.money(p)));
    price.judged().addListener((property, was, now) -> model.partsList().priced(key, price));
    String id = "price-" + key.replace('.', '-').toLowerCase(Locale.ROOT);
    NumberField field = new NumberField(id, words.text("design.parts.price", line.part()), price);
    field.getStyleClass().addAll("price-field", "optional");
    Label name = Words.label(line.part(), "semibold");
    Label what = Words.label("");
    Label lookFor = Words.label(line.lookFor(), "fine", "soft");
    VBox said = new VBox(name, what, lookFor);
    HBox.setHgrow(said, Priority.ALWAYS);
    Label amount = Words.label("", "part-amount");
    Label total = new Prose();
    total.getStyleClass().addAll("fine", "soft");
    VBox cost = Boxes.column("price-field", field, total);
    HBox lineBox = Boxes.row("part-line", said, amount, cost);
    VBox node = new VBox(lineBox);
    node.setId("part-" + key.replace('.', '-').toLowerCase(Locale.ROOT));
    node.getStyleClass().addAll("outcome", "row");
    return new Row(node, what, amount, total);
  }
}
