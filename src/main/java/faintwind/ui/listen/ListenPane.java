package faintwind.ui.listen;

import faintwind.calibration.profile.ImportProfile;
import faintwind.job.live.Listen;
import faintwind.message.Checked;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Listens to the logger: the choice of the source, then how the recording goes, then its file. */
public final class ListenPane extends VBox {
  private final Desk desk;
  private final ListenModel model;
  private final SourceChoiceModel choice;
  private final Supplier<Optional<Listen.BySpeed>> speed;
  private final Node chooser;
  private final VBox problems = Boxes.column("problem-list");
  private final TextField typed = new TextField();
  private final ChangeListener<ListenModel.View> changed = (p, was, now) -> show(now);

  /**
   * A pane on a recording.
   *
   * @param speed by which calibration the air speed is shown, if by any
   * @param keep keeps a profile that was put together here
   */
  ListenPane(
      Desk desk,
      ListenModel model,
      SourceChoiceModel choice,
      Supplier<Optional<Listen.BySpeed>> speed,
      Consumer<ImportProfile> keep) {
    this.desk = desk;
    this.model = model;
    this.choice = choice;
    this.speed = speed;
    setId("listen-pane");
    getStyleClass().add("data-body");
    problems.setId("listen-problems");
    chooser = new SourceChoice(desk, choice, keep);
    typed.setId("listen-typed");
    typed.setPrefColumnCount(8);
    typed.setMaxWidth(USE_PREF_SIZE);
    typed.setAccessibleText(desk.text("listen.typed-label"));
    typed.setOnAction(
        event -> {
          model.enter(typed.getText());
          typed.clear();
        });
    model.view().addListener(changed);
    show(model.view().get());
  }

  /** Stops looking at the recording; it goes on. */
  public void left() {
    model.view().removeListener(changed);
  }

  private void show(ListenModel.View now) {
    problems.getChildren().setAll(Rows.problems(now.problems(), false, desk.words()));
    if (now.stage() == ListenModel.Stage.LISTENING) {
      showListening(now);
      return;
    }
    Button begin = Words.button("listen-begin", desk.text("listen.begin"), this::begin);
    begin.getStyleClass().add("quiet");
    getChildren()
        .setAll(
            Words.label(desk.text("listen.title"), "tell", "semibold"), chooser, begin, problems);
    if (now.stage() == ListenModel.Stage.OVER) {
      getChildren().add(1, Words.label(now.sentence()));
    }
  }

  private void showListening(ListenModel.View now) {
    boolean focused = typed.isFocused() || !getChildren().contains(typed);
    Button stop = Words.button("listen-stop", desk.text("listen.stop"), model::stop);
    stop.getStyleClass().add("quiet");
    getChildren().setAll(Words.label(now.sentence(), "tell", "semibold"));
    if (model.isTyped()) {
      String asked = now.asked().isEmpty() ? desk.text("listen.typed-wait") : now.asked();
      getChildren().addAll(Words.label(asked), typed);
      if (focused) {
        typed.requestFocus();
      }
    }
    getChildren().addAll(stop, problems);
  }

  private void begin() {
    Checked<Listen.What> chosen = choice.chosen(speed.get());
    if (chosen instanceof Checked.Ok<Listen.What> ok) {
      model.begin(ok.value());
      return;
    }
    problems
        .getChildren()
        .setAll(
            Rows.problems(
                chosen.problems().stream().map(desk.words()::sentence).toList(),
                true,
                desk.words()));
  }
}
