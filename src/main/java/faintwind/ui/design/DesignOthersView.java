package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.advice.Substitution;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Label;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** Parts on hand at the left; what each would change, and all together, in the middle. */
final class DesignOthersView {
  private final Messages words;
  private final DesignModel model;
  private final VBox form = Boxes.column("design-form");
  private final VBox box = Boxes.column("design-page");
  private final DesignPicks<StringProperty> picks = new DesignPicks<>();

  DesignOthersView(Desk desk, DesignModel model) {
    this.model = model;
    words = desk.words();
    box.setId("design-others");
    buildForm();
    model.others().tried().addListener((property, was, now) -> fill(now));
    fill(model.others().tried().get());
  }

  Node form() {
    return form;
  }

  Node node() {
    return box;
  }

  private void buildForm() {
    form.setId("others-form");
    form.getChildren()
        .addAll(
            Words.label(words.text("design.others"), "tell", "semibold"),
            Words.label(words.text("design.others.how"), "fine", "soft"),
            number("others-ball", "design.others.ball", model.others().ball()),
            number("others-resistor", "design.others.resistor", model.others().resistor()),
            pick("thermocouple", model.others().thermocouple()),
            pick("leads", model.others().leads()));
  }

  private Node number(String id, String key, NumberModel number) {
    return DesignRows.number(id, words.text(key), number);
  }

  private Node pick(String what, StringProperty picked) {
    return picks.row(picked, "others-" + what, words.text("design.others." + what), picked::set);
  }

  /** Shows what can be picked and what is. */
  void fill(Catalogue parts) {
    picks.show(
        part ->
            part == model.others().leads()
                ? options(parts.wires(), w -> w.label())
                : options(parts.thermocouples(), t -> t.label()),
        StringProperty::get);
  }

  private static <T> List<DesignChoices.Option> options(List<T> parts, Function<T, Label> label) {
    return parts.stream()
        .map(label)
        .map(l -> new DesignChoices.Option(l.id(), l.name()))
        .sorted(Comparator.comparing(DesignChoices.Option::name))
        .toList();
  }

  private void fill(List<DesignOthersModel.Tried> tried) {
    model.parts().ifPresent(this::fill);
    box.getChildren().clear();
    if (tried.isEmpty()) {
      box.getChildren().add(Rows.soft(words.text("design.others.none")));
    }
    tried.forEach(t -> box.getChildren().add(block(t)));
  }

  private Node block(DesignOthersModel.Tried t) {
    VBox block = Boxes.column("suggestion");
    block.setId("other-" + t.id());
    block
        .getChildren()
        .add(Words.label(words.text("substitution." + t.id(), t.by()), "semibold", "tell"));
    block
        .getChildren()
        .addAll(Rows.problems(t.problems().stream().map(words::sentence).toList(), true, words));
    if (t.result().isPresent() && t.consequences().isEmpty()) {
      block.getChildren().add(Rows.soft(words.text("design.others.nothing")));
    }
    if (!t.consequences().isEmpty()) {
      List<List<String>> rows = new ArrayList<>();
      t.consequences().forEach(c -> rows.add(row(c)));
      block
          .getChildren()
          .add(
              DesignTable.of(
                  "other-" + t.id() + "-table",
                  List.of(
                      words.text("design.others.now"),
                      words.text("design.others.then"),
                      words.text("design.others.change")),
                  rows));
    }
    t.consequences().stream()
        .filter(c -> c.after().verdict() != c.before().verdict())
        .flatMap(c -> c.after().reason().stream())
        .forEach(
            r ->
                block
                    .getChildren()
                    .addAll(Rows.problems(List.of(words.sentence(r)), r.isError(), words)));
    t.result().ifPresent(worked -> block.getChildren().add(use(t.id(), worked)));
    return block;
  }

  private Node use(String id, Sized worked) {
    Hyperlink use = new ProseLink(words.text("design.others.use"));
    use.setId("use-" + id);
    use.setOnAction(event -> model.use(worked));
    return use;
  }

  private List<String> row(Substitution.Consequence c) {
    String name = words.text("quantity." + c.before().id().id());
    String unit = c.before().id().unit();
    return List.of(
        unit.isEmpty() ? name : name + ", " + unit,
        Numerals.digits(c.before().value().nominal()),
        Numerals.digits(c.after().value().nominal()),
        words.text(
            "design.others.percent",
            (c.share() < 0 ? "−" : "+") + Numerals.digits(Math.abs(100 * c.share()))));
  }
}
