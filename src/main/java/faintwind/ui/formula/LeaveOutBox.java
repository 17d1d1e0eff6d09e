package faintwind.ui.formula;

import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.Run;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.message.Amount;
import faintwind.message.Typeset;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Leaves a run or a stretch of it out of the fit, with the reason, and takes it back. */
final class LeaveOutBox extends VBox {
  private static final double MINUTE_S = 60;

  private final Desk desk;
  private final FormulaModel model;
  private final List<Run> runs;
  private final ComboBox<String> which = new FoldingChoice<>();
  private final NumberModel from;
  private final NumberModel to;
  private final TextField reason = new TextField();
  private final Label refused = Words.label("", "fine", "mark-blocked");

  LeaveOutBox(Desk desk, FormulaModel model, Kept made) {
    this.desk = desk;
    this.model = model;
    this.runs = made.formula().runs();
    from = new NumberModel("min", desk.words());
    to = new NumberModel("min", desk.words());
    setId("leave-out");
    getStyleClass().add("data-body");
    getChildren()
        .addAll(
            Words.label(desk.text("leave-out.title"), "tell", "semibold"),
            Rows.soft(desk.text("leave-out.how")));
    List<String> changes = model.leaveOut().changes(made);
    if (!changes.isEmpty()) {
      VBox changed = Boxes.column("fact-block");
      changed.setId("leave-out-changes");
      changes.forEach(line -> changed.getChildren().add(Words.label(line, "fine")));
      getChildren().add(changed);
    }
    runs.stream().filter(run -> !run.conditions().notCounted().isNothing()).forEach(this::row);
    getChildren().addAll(form(), refused);
    refused.setId("leave-out-refused");
    refused.textProperty().bind(model.leaveOut().refused().map(Typeset::of));
  }

  /** One that is left out, with the way back. */
  private void row(Run run) {
    String what = LeaveOut.what(run.conditions().notCounted(), desk.words());
    getChildren()
        .add(
            Boxes.row(
                "ways",
                Words.label(desk.text("leave-out.is", run.name(), what)),
                Words.link(
                    "leave-out-back-" + run.name(),
                    desk.text("leave-out.again"),
                    () -> choose(run, NotCounted.NOTHING, desk.text("leave-out.again-reason")))));
  }

  private Node form() {
    which.setId("leave-out-run");
    which.setAccessibleText(desk.text("leave-out.run"));
    runs.stream().filter(run -> !run.isLeftOut()).forEach(r -> which.getItems().add(r.name()));
    reason.setId("leave-out-reason");
    reason.setPromptText(desk.text("leave-out.reason"));
    reason.setAccessibleText(desk.text("leave-out.reason"));
    Boxes.grow(reason);
    Button go = Words.button("leave-out-go", desk.text("leave-out.go"), this::go);
    return Boxes.column(
        "data-body",
        Boxes.row(
            "typed-run",
            named("leave-out.run", which),
            named("leave-out.from", field("leave-out-from", "leave-out.from", from)),
            named("leave-out.to", field("leave-out-to", "leave-out.to", to))),
        Boxes.row("waiver-form", reason, go));
  }

  private NumberField field(String id, String key, NumberModel number) {
    return new NumberField(id, desk.text(key), number);
  }

  private Node named(String key, Node field) {
    return Boxes.column("typed-field", Words.label(desk.text(key), "column-head"), field);
  }

  private void go() {
    int at = which.getSelectionModel().getSelectedIndex();
    List<Run> choice = runs.stream().filter(run -> !run.isLeftOut()).toList();
    if (at < 0) {
      which.requestFocus();
      return;
    }
    Run run = choice.get(at);
    Optional<Double> from_s = seconds(from);
    Optional<Double> to_s = seconds(to);
    NotCounted what =
        from_s.isEmpty() && to_s.isEmpty()
            ? NotCounted.ALL
            : run.conditions()
                .notCounted()
                .with(
                    new NotCounted.Stretch(
                        from_s.orElse(run.recording().signal().first_s()),
                        to_s.orElse(run.recording().signal().last_s())));
    choose(run, what, reason.getText());
  }

  private Optional<Double> seconds(NumberModel minutes) {
    minutes.judge();
    return minutes
        .amount()
        .filter(a -> a.bound() == Amount.Bound.EXACT)
        .map(a -> a.value() * MINUTE_S);
  }

  private void choose(Run run, NotCounted what, String why) {
    model.leaveOut(new LeaveOut.Choice(run.name(), what, why.strip()));
  }
}
