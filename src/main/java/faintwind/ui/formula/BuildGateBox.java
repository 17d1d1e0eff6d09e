package faintwind.ui.formula;

import faintwind.guide.InForceGate.Answer;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.fold.ProseButton;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What stands before a fit is put in force: what it is held up by, with the place for an
 * explanation, and what is open in the build.
 */
final class BuildGateBox extends VBox {
  private static final int MOST_LINES = 6;

  private final FormulaModel model;
  private final Messages words;

  BuildGateBox(Answer gate, List<Problem> warnings, FormulaModel model, Messages words) {
    this.model = model;
    this.words = words;
    setId("formula-gate");
    if (!gate.opens()) {
      getChildren().add(wash(gate, warnings));
    }
    if (!gate.open().isEmpty()) {
      getChildren().add(open(gate.open()));
    }
  }

  private VBox wash(Answer gate, List<Problem> warnings) {
    VBox said = new VBox();
    said.getStyleClass().add("trouble-said");
    HBox.setHgrow(said, Priority.ALWAYS);
    gate.reasons()
        .forEach(r -> said.getChildren().add(Words.label(words.sentence(r), "tell", "bold")));
    warnings.stream()
        .filter(w -> w.id().startsWith("fit.build-"))
        .forEach(w -> said.getChildren().add(Words.label(words.note(w))));
    said.getChildren().add(form());
    HBox line =
        Boxes.row(
            "trouble-line", new MarkShape(Mark.ATTENTION, words.text(Mark.ATTENTION.key())), said);
    return Boxes.column("trouble care", line);
  }

  private VBox form() {
    TextField reason = new TextField();
    reason.setId("formula-build-reason");
    reason.setPromptText(words.text("formula.build.reason"));
    reason.setAccessibleText(words.text("formula.build.reason"));
    Boxes.grow(reason);
    // Not a default button: plain Enter never sets anything aside.
    Button go = new ProseButton(words.text("formula.build.explain"));
    go.setId("formula-build-explain");
    go.getStyleClass().add("quiet");
    Label why = Words.label("", "fine", "soft");
    why.setId("formula-build-why");
    judge(reason, go, why);
    reason.textProperty().addListener((p, was, now) -> judge(reason, go, why));
    go.setOnAction(event -> model.explain(reason.getText()));
    return new VBox(
        Words.label(words.text("formula.build.means"), "fine", "soft"),
        Boxes.row("waiver-form", reason, go),
        why);
  }

  private void judge(TextField reason, Button go, Label why) {
    List<String> not = model.whyNotExplained(reason.getText());
    go.setDisable(!not.isEmpty());
    why.setText(
        reason.getText().isBlank() ? words.text("in-force.no-reason.todo") : String.join(" ", not));
  }

  private VBox open(List<Problem> open) {
    List<String> lines = new ArrayList<>();
    open.stream().limit(MOST_LINES).forEach(problem -> lines.add(words.note(problem)));
    if (open.size() > MOST_LINES) {
      lines.add(words.text("formula.open.more", open.size() - MOST_LINES));
    }
    VBox box = new VBox(Words.label(words.text("formula.open", open.size()), "semibold"));
    box.setId("formula-open");
    box.getChildren().addAll(Rows.problems(lines, false, words));
    return box;
  }
}
