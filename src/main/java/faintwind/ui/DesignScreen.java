package faintwind.ui;

import faintwind.job.DesignWork;
import faintwind.physics.design.Catalogue;
import faintwind.report.plot.PlotFigure;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.WhyLink;
import java.util.List;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * Choices left, outcomes with their ranges in the middle, plots and side by side right; all live.
 */
public final class DesignScreen {
  private static final double PLOT_EM = 13;
  private static final double DRAWING_EM = 17;

  private final Desk desk;
  private final DesignModel model;
  private final DesignWords said;
  private final Screen screen;
  private final DesignChoicesView choices;
  private final VBox aside = new VBox();

  @FXML private Label title;
  @FXML private VBox problems;
  @FXML private VBox outcomes;
  @FXML private Hyperlink all;
  @FXML private VBox rest;

  public DesignScreen(Desk desk, DesignModel model) {
    this.desk = desk;
    this.model = model;
    said = new DesignWords(desk.words());
    VBox sheet = FxScreen.load(this, desk.words(), VBox.class);
    choices = new DesignChoicesView(desk.words(), model);
    aside.getStyleClass().addAll("design-aside", "wide");
    aside.setId("design-aside");
    buildRest();
    screen =
        DataScreen.of(sheet, model.next())
            .withPath(choices.node())
            .withMargin(aside)
            .filledBy(model.view(), this::fill);
  }

  /** What the frame shows. */
  public Screen screen() {
    return screen;
  }

  private void buildRest() {
    rest.setVisible(false);
    rest.setManaged(false);
    all.setOnAction(
        event -> {
          rest.setVisible(!rest.isVisible());
          rest.setManaged(rest.isVisible());
        });
  }

  private void fill(DesignModel.View now) {
    title.setText(model.title());
    problems.getChildren().setAll(Rows.problems(now.problems(), true, desk.words()));
    model.parts().ifPresent((Catalogue parts) -> choices.fill(parts));
    outcomes.getChildren().clear();
    rest.getChildren().clear();
    aside.getChildren().clear();
    now.worked().ifPresent(worked -> fill(now, worked));
  }

  private void fill(DesignModel.View now, DesignWork.Worked worked) {
    said.first(worked).forEach(o -> outcomes.getChildren().add(row(o, worked)));
    said.rest(worked).forEach(o -> rest.getChildren().add(row(o, worked)));
    PlotFigure delta = said.delta(worked);
    PlotFigure time = said.timeConstants(now.compared());
    FigureView ball = new FigureView(desk.look(), desk.words().locale(), DRAWING_EM);
    ball.show(said.ball(worked));
    ball.setAccessibleText(said.ball(worked).description());
    aside
        .getChildren()
        .setAll(
            FigureCard.of("design-delta", delta, PLOT_EM, desk),
            FigureCard.of("design-time", time, PLOT_EM, desk),
            sideBySide(now),
            ball);
  }

  private Node row(DesignWords.Outcome outcome, DesignWork.Worked worked) {
    Label name = Rows.words(outcome.name());
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    VBox value =
        new VBox(fixed(outcome.value(), "outcome-value"), fixed(outcome.range(), "fine", "soft"));
    value.getStyleClass().add("outcome-numbers");
    Label verdict = fixed(outcome.verdict(), "semibold", outcome.mark().styleClass());
    WhyLink why =
        new WhyLink(
            "why-" + outcome.id(),
            outcome.name(),
            () -> said.why(outcome.id(), worked),
            desk.notes(),
            desk.words());
    VBox judged = new VBox(verdict, why);
    judged.getStyleClass().add("outcome-judged");
    MarkShape mark = new MarkShape(outcome.mark(), outcome.verdict());
    mark.setVisible(outcome.mark() != Mark.READY);
    HBox line = new HBox(mark, name, value, judged);
    line.getStyleClass().add("outcome-line");
    VBox row = new VBox(line);
    row.getStyleClass().addAll("outcome", "row");
    row.setId("outcome-" + outcome.id());
    if (!outcome.reason().isEmpty()) {
      row.getStyleClass().add(outcome.mark() == Mark.BLOCKED ? "stop" : "improve");
      row.getChildren().add(Rows.words(outcome.reason(), "outcome-reason"));
    }
    return row;
  }

  private static Label fixed(String text, String... styles) {
    Label label = new Label(text);
    label.setMinWidth(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  private Node sideBySide(DesignModel.View now) {
    Label head = Rows.words(desk.words().text("design.side"), "semibold");
    HBox.setHgrow(head, Priority.ALWAYS);
    head.setMaxWidth(Double.MAX_VALUE);
    Hyperlink add = new Hyperlink(desk.words().text("design.side.add"));
    add.setId("design-compare");
    add.getStyleClass().add("fine");
    add.setOnAction(event -> model.compare());
    GridPane grid = new GridPane();
    grid.getStyleClass().add("side-by-side");
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    names.setMinWidth(Region.USE_PREF_SIZE);
    grid.getColumnConstraints().add(names);
    for (int k = 0; k < now.compared().size(); k++) {
      grid.add(Rows.words(now.compared().get(k).name(), "fine", "bold", "side-head"), k + 1, 0);
    }
    List<List<String>> rows = said.sideBySide(now.compared());
    for (int i = 0; i < rows.size(); i++) {
      for (int k = 0; k < rows.get(i).size(); k++) {
        Label cell =
            fixed(rows.get(i).get(k), k == 0 ? new String[] {"fine", "soft"} : new String[0]);
        grid.add(cell, k, i + 1);
        GridPane.setHalignment(
            cell, k == 0 ? javafx.geometry.HPos.LEFT : javafx.geometry.HPos.RIGHT);
      }
    }
    VBox box = new VBox(new HBox(head, add), grid);
    box.getStyleClass().add("fact-block");
    return box;
  }
}
