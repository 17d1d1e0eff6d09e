package faintwind.ui.design;

import faintwind.message.Messages;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.ui.design.DesignSideModel.Compared;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.ProseButton;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkLabel;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** The wish at the left; two or three designs for it with their reasons, a table and a plot. */
final class DesignWishView {
  private static final double PLOT_EM = 15;

  private final Desk desk;
  private final Messages words;
  private final DesignModel model;
  private final DesignCompareWords said;
  private final VBox form = Boxes.column("design-form");
  private final VBox box = Boxes.column("design-page");
  private final DesignPicks<DesignWishModel.Pick> picks = new DesignPicks<>();

  DesignWishView(Desk desk, DesignModel model) {
    this.desk = desk;
    this.model = model;
    words = desk.words();
    said = new DesignCompareWords(words);
    box.setId("design-wish");
    buildForm();
    model.wish().answer().addListener((property, was, now) -> fill(now));
    fill(model.wish().answer().get());
  }

  Node form() {
    return form;
  }

  Node node() {
    return box;
  }

  private void buildForm() {
    form.setId("wish-form");
    form.getChildren()
        .addAll(
            Words.label(words.text("design.wish"), "tell", "semibold"),
            DesignRows.number(
                "wish-slowest", words.text("design.wish.slowest"), model.wish().slowest()),
            Words.label(words.text("design.wish.slowest-help"), "fine", "soft"),
            DesignRows.number(
                "wish-response", words.text("design.wish.response"), model.wish().response()),
            Words.label(words.text("design.wish.response-help"), "fine", "soft"),
            pick(DesignWishModel.Pick.PLACE),
            pick(DesignWishModel.Pick.CONTACT),
            pick(DesignWishModel.Pick.LOGGER),
            pick(DesignWishModel.Pick.SPEND),
            Words.label(words.text("design.wish.rest"), "fine", "soft"));
  }

  private Node pick(DesignWishModel.Pick pick) {
    String name = pick.name().toLowerCase(Locale.ROOT);
    return picks.row(
        pick,
        "wish-" + name,
        words.text("design.wish." + name),
        id -> model.wish().pick(pick).set(id));
  }

  /** Shows what can be picked and what is. */
  void fill(Catalogue parts) {
    picks.show(pick -> model.wish().options(pick, parts), pick -> model.wish().pick(pick).get());
  }

  private void fill(DesignWishModel.Answer answer) {
    model.parts().ifPresent(this::fill);
    box.getChildren().clear();
    if (!answer.known()) {
      box.getChildren().add(Rows.soft(words.text("design.wish.wait")));
      return;
    }
    if (answer.suggestions().isEmpty()) {
      box.getChildren().add(Words.label(words.text("suggest.none")));
      return;
    }
    for (int i = 0; i < answer.suggestions().size(); i++) {
      box.getChildren().add(block(i + 1, answer.suggestions().get(i)));
    }
    List<Compared> columns = columns(answer.suggestions());
    List<List<String>> rows = new ArrayList<>(said.rows(columns, DesignCompareWords.ALL));
    rows.addAll(said.lastRows(columns));
    box.getChildren()
        .addAll(
            DesignTable.of("wish-table", DesignCompareWords.heads(columns), rows),
            FigureCard.of("wish-plot", said.deltas(columns), PLOT_EM, desk));
  }

  private Node block(int number, Suggestion suggestion) {
    VBox block = Boxes.column("suggestion");
    block.setId("suggestion-" + number);
    block
        .getChildren()
        .add(
            Words.label(
                words.text(
                    "suggest.design",
                    suggestion.design().name(),
                    suggestion.design().ball().coat().label().name(),
                    suggestion.design().sense().type().label().name()),
                "semibold",
                "tell"));
    DesignVerdict verdict = DesignCompareWords.worst(suggestion.sheet());
    block.getChildren().add(new MarkLabel(DesignWords.mark(verdict), said.verdict(verdict)));
    suggestion.reasons().forEach(r -> block.getChildren().add(Words.label(words.sentence(r))));
    Button take = new ProseButton(words.text("design.wish.take"));
    take.setId("take-" + number);
    take.getStyleClass().add("quiet");
    take.setAccessibleText(words.text("design.next.wish.act", suggestion.design().name()));
    take.setOnAction(event -> model.take(suggestion));
    block.getChildren().add(take);
    return block;
  }

  private List<Compared> columns(List<Suggestion> suggestions) {
    List<Compared> columns = new ArrayList<>();
    for (Suggestion s : suggestions) {
      columns.add(new Compared(s.design().name(), model.asWorked(s)));
    }
    model
        .view()
        .get()
        .worked()
        .ifPresent(w -> columns.add(new Compared(words.text("design.wish.present"), w)));
    return columns;
  }
}
