package faintwind.ui.part;

import faintwind.ui.fold.Prose;
import faintwind.ui.fold.ProseLink;
import javafx.animation.PauseTransition;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * A box for a number: text at the right, the unit inside after it, what was understood below. It is
 * judged when the focus leaves and after 0.8 s of rest.
 */
public final class NumberField extends VBox {
  private static final Duration REST = Duration.millis(800);
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

  private final NumberModel model;
  private final TextField text = new TextField();
  private final Label understood = new Prose();
  private final StackPane box = new StackPane();
  private final HBox line = Boxes.row("number-line", box);
  private final HBox choices = Boxes.row("number-choices");
  private final PauseTransition rest = new PauseTransition(REST);
  private final String about;

  /**
   * A field on a model.
   *
   * @param id stable id of the text field
   * @param about what the number is, for the accessible text, such as "Lead A to ball, expected 20
   *     megohm or more"
   */
  public NumberField(String id, String about, NumberModel model) {
    this.model = model;
    this.about = about;
    getStyleClass().add("number-field");
    text.setId(id);
    text.getStyleClass().add("number-text");
    text.setAlignment(Pos.CENTER_RIGHT);
    text.textProperty().bindBidirectional(model.typed());
    Label unit = Words.whole(model.unit(), "soft", "number-unit");
    unit.setMouseTransparent(true);
    // What is typed with its own unit or prefix needs no second one beside it.
    unit.visibleProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> model.typed().get().chars().noneMatch(Character::isLetter), model.typed()));
    box.getChildren().addAll(text, unit);
    box.getStyleClass().add("number-box");
    StackPane.setAlignment(unit, Pos.CENTER_RIGHT);
    // The unit's width differs by unit and text size: the typed text ends where the unit begins.
    unit.widthProperty()
        .addListener(
            (property, was, now) ->
                text.setStyle("-fx-padding: 0 " + Math.ceil(now.doubleValue()) + "px 0 0.5em;"));
    understood.setId(id + "-understood");
    understood.getStyleClass().addAll("fine", "soft", "understood");
    understood.setWrapText(true);
    getChildren().addAll(line, understood);
    rest.setOnFinished(event -> model.judge());
    text.textProperty().addListener((property, was, now) -> rest.playFromStart());
    text.focusedProperty()
        .addListener(
            (property, was, now) -> {
              if (!now) {
                rest.stop();
                model.judge();
              }
            });
    text.setOnAction(event -> model.judge());
    model.judged().addListener((property, was, now) -> show());
    model.remark().addListener((property, was, now) -> show());
    show();
  }

  /** The box that takes the typing and the focus. */
  public TextField text() {
    return text;
  }

  /** Puts a node, such as a verdict, at the right of the box; the words below span both. */
  public NumberField with(Node beside) {
    line.getChildren().add(beside);
    return this;
  }

  private void show() {
    NumberModel.Judged judged = model.judged().get();
    String remark = model.remark().get();
    understood.setText(
        judged.understood().isEmpty() || remark.isEmpty()
            ? judged.understood() + remark
            : judged.understood() + ", " + remark);
    text.pseudoClassStateChanged(REFUSED, judged.isRefused());
    understood.pseudoClassStateChanged(REFUSED, judged.isRefused());
    text.setAccessibleText(about + ", " + judged.typed() + ", " + understood.getText());
    choices.getChildren().clear();
    getChildren().remove(choices);
    judged.choices().forEach(choice -> choices.getChildren().add(choice(choice)));
    if (!judged.choices().isEmpty()) {
      getChildren().add(choices);
    }
  }

  private Hyperlink choice(String number) {
    Hyperlink pick = new ProseLink(number);
    pick.setId(text.getId() + "-choice-" + (choices.getChildren().size() + 1));
    pick.getStyleClass().add("fine");
    pick.setOnAction(
        event -> {
          model.set(number);
          text.requestFocus();
        });
    return pick;
  }
}
