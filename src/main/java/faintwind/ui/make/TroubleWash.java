package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.ui.fold.ProseButton;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One wash across the sheet: cause, reason, next likely, what is locked; the waiver last. */
final class TroubleWash extends VBox {
  private final StepView.Trouble trouble;
  private final StepModel model;
  private final Messages words;
  private final VBox said = Boxes.column("trouble-said");
  private Optional<TextField> name = Optional.empty();
  private Optional<TextField> reason = Optional.empty();

  /** A waiver that is being written: for which reading, and what is typed so far. */
  record Draft(String waivable, String name, String reason) {}

  /**
   * A wash.
   *
   * @param draft what was being written in the wash before it; goes on where it is of the same
   *     reading
   */
  TroubleWash(StepView.Trouble trouble, StepModel model, Messages words, Optional<Draft> draft) {
    this.trouble = trouble;
    this.model = model;
    this.words = words;
    getStyleClass().addAll("trouble", trouble.mark() == Mark.BLOCKED ? "stop" : "care");
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox line =
        Boxes.row(
            "trouble-line", new MarkShape(trouble.mark(), words.text(trouble.mark().key())), said);
    getChildren().add(line);
    said.getChildren().add(Words.label(trouble.cause(), "tell", "bold"));
    if (!trouble.because().isEmpty()) {
      said.getChildren().add(Words.label(trouble.because()));
    }
    if (!trouble.nextLikely().isEmpty()) {
      said.getChildren()
          .add(Words.label(words.text("window.step.next-likely", trouble.nextLikely())));
    }
    if (!trouble.locked().isEmpty()) {
      said.getChildren().add(Words.label(trouble.locked(), "semibold", "mark-blocked"));
    }
    if (!trouble.waivable().isEmpty()) {
      Optional<Draft> same = draft.filter(d -> d.waivable().equals(trouble.waivable()));
      said.getChildren().add(same.isPresent() ? form(same.get()) : waiver());
    }
  }

  /** What is being written; empty while the form is not open. */
  Optional<Draft> draft() {
    return name.flatMap(
        n -> reason.map(r -> new Draft(trouble.waivable(), n.getText(), r.getText())));
  }

  private HBox waiver() {
    Hyperlink link = new ProseLink(words.text("window.step.waive"));
    link.setId("waive");
    HBox line =
        Boxes.row(
            "waiver-line", link, Words.label(words.text("window.step.waive-asks"), "fine", "soft"));
    link.setOnAction(
        event -> {
          Draft empty = new Draft(trouble.waivable(), "", "");
          said.getChildren().set(said.getChildren().indexOf(line), form(empty));
        });
    return line;
  }

  /** Opens the button, or says what keeps it shut. */
  private void judge(TextField name, TextField reason, Button go, Label why) {
    List<String> open = model.whyNotWaived(trouble.waivable(), name.getText(), reason.getText());
    go.setDisable(!open.isEmpty());
    why.setText(String.join(" ", open));
  }

  private VBox form(Draft draft) {
    TextField name = new TextField(draft.name());
    name.setId("waiver-name");
    name.setPromptText(words.text("window.step.waiver-name"));
    name.setAccessibleText(words.text("window.step.waiver-name"));
    TextField reason = new TextField(draft.reason());
    reason.setId("waiver-reason");
    reason.setPromptText(words.text("window.step.waiver-reason"));
    reason.setAccessibleText(words.text("window.step.waiver-reason"));
    HBox.setHgrow(reason, Priority.ALWAYS);
    // Not a default button: plain Enter never waives.
    Button go = new ProseButton(words.text("window.step.waive-now"));
    go.setId("waiver-go");
    go.setMinWidth(USE_PREF_SIZE);
    go.getStyleClass().add("quiet");
    Label why = Words.label("", "fine", "soft");
    why.setId("waiver-why");
    judge(name, reason, go, why);
    this.name = Optional.of(name);
    this.reason = Optional.of(reason);
    name.textProperty().addListener((p, was, now) -> judge(name, reason, go, why));
    reason.textProperty().addListener((p, was, now) -> judge(name, reason, go, why));
    go.setOnAction(event -> model.waive(trouble.waivable(), name.getText(), reason.getText()));
    HBox line = Boxes.row("waiver-form", name, reason, go);
    return new VBox(Words.label(words.text("window.step.waive-means"), "fine", "soft"), line, why);
  }
}
