package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.KeptLogs;
import faintwind.job.field.LookedAtLog;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.listen.ListenPane;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.FileDrop;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The day in a sentence, speed with its band, the raw record, one lane a flag. */
public final class FieldScreen extends DataScreen {
  private final FieldModel model;
  private Optional<LoggerWays> logger = Optional.empty();
  private final FieldMargin margin;

  @FXML private VBox pages;
  @FXML private Label title;
  @FXML private VBox kept;
  @FXML private VBox bring;
  @FXML private VBox problems;
  @FXML private VBox plots;

  public FieldScreen(Desk desk, FieldModel model) {
    super(desk, model.next());
    this.model = model;
    margin = new FieldMargin(desk);
    withMargin(margin);
    model.leadsTo(toAnother(), Optional.empty());
    filledBy(model.view(), this::fill);
  }

  /** With links to the other pages. */
  public FieldScreen withPages(Node links) {
    pages.getChildren().setAll(links);
    Act formula =
        new Act(
            "open-formula",
            text("field.next.calibration.act"),
            () -> desk().go().accept(Place.FORMULA));
    model.leadsTo(toAnother(), Optional.of(formula));
    return this;
  }

  private Act toAnother() {
    return new Act("field-next-log", text("field.another"), this::askLog);
  }

  /** With ways to listen to the logger and to read a foreign log. */
  public FieldScreen withLogger(LoggerWays ways) {
    logger = Optional.of(ways);
    fill(model.view().get());
    if (ways.isListening()) {
      listen(ways);
    }
    return this;
  }

  /** With the logs on record over what is brought in; a chosen one is opened. */
  public FieldScreen withKept(List<KeptLogs.Log> logs) {
    if (!logs.isEmpty()) {
      kept.getChildren().setAll(new WeekStrip(desk(), logs, model::open, model::openTogether));
    }
    return this;
  }

  private void listen(LoggerWays ways) {
    ListenPane pane = ways.listening(model::bySpeed);
    whenLeft(pane::left);
    bring.getChildren().setAll(pane);
  }

  private void askForeign(LoggerWays ways) {
    desk()
        .files()
        .open(text("field.foreign"), text("listen.file-kind"), "*.*")
        .ifPresent(log -> askForeign(ways, log));
  }

  private void askForeign(LoggerWays ways, Path log) {
    ways.foreign(bring, log, profile -> model.open(log, profile));
  }

  private void fill(FieldModel.View now) {
    show(now);
    Boxes.present(margin, !margin.getChildren().isEmpty());
  }

  private void show(FieldModel.View now) {
    problems
        .getChildren()
        .setAll(Rows.problems(now.problems(), now.look().isEmpty(), desk().words()));
    plots.getChildren().clear();
    margin.getChildren().clear();
    bring.getChildren().clear();
    if (!now.together().isEmpty()) {
      fillTogether(now);
      return;
    }
    if (now.look().isEmpty()) {
      title.setText(text("field.title.nothing"));
      bring.getChildren().setAll(now.calibration().isEmpty() ? calibrationDrop() : logDrop());
      if (now.calibration().isPresent()) {
        logger.ifPresent(ways -> bring.getChildren().add(links(ways)));
        logger.ifPresent(ways -> model.foreign().ifPresent(log -> askForeign(ways, log)));
      }
      now.calibration().ifPresent(margin::calibration);
      return;
    }
    FieldWords said = said(now.look().get(), now.findings().orElseThrow(), calibration(now));
    title.setText(said.title());
    plots
        .getChildren()
        .setAll(new FieldPlotView(desk(), FieldDrawing.of(said), said.time(), List.of(said)));
    margin.log(said);
    margin.calibration(calibration(now));
    margin.getChildren().add(another());
  }

  private static Calibration calibration(FieldModel.View now) {
    return now.calibration().orElseThrow();
  }

  private FieldWords said(LookedAtLog look, FieldFindings findings, Calibration by) {
    return new FieldWords(desk().words(), look, findings, by);
  }

  /** What else can be looked at. */
  private Node another() {
    Button another = Words.button("field-another", text("field.another"), this::askLog);
    another.getStyleClass().add("quiet");
    VBox all = Boxes.column("data-body", another);
    logger.ifPresent(ways -> all.getChildren().add(links(ways)));
    return all;
  }

  private void fillTogether(FieldModel.View now) {
    List<FieldWords> all =
        now.together().stream()
            .map(found -> said(found.looked(), found.findings(), found.way().by()))
            .toList();
    title.setText(text("field.title.together", all.size()));
    plots
        .getChildren()
        .setAll(new FieldPlotView(desk(), FieldDrawing.together(all), FieldDrawing.axis(all), all));
    margin.logs(all);
    margin.getChildren().add(another());
  }

  private Node links(LoggerWays ways) {
    return Boxes.row(
        "ways",
        Words.link("field-listen", text("field.listen"), () -> listen(ways)),
        Words.link("field-foreign", text("field.foreign"), () -> askForeign(ways)));
  }

  private Node logDrop() {
    return new FileDrop(
        "field-drop",
        text("field.drop"),
        text("field.drop.choose"),
        this::askLog,
        files -> files.stream().findFirst().ifPresent(model::open));
  }

  private void askLog() {
    desk()
        .files()
        .open(
            text("field.drop.choose"), text("turntable.kind"), "*.csv", "*.txt", "*.xlsx", "*.ods")
        .ifPresent(model::open);
  }

  private Node calibrationDrop() {
    return new FileDrop(
        "field-calibration",
        text("field.calibration.drop"),
        text("field.calibration.choose"),
        () ->
            desk()
                .files()
                .open(text("field.calibration.choose"), text("field.calibration.kind"), "*.json")
                .ifPresent(model::useCalibration),
        files -> files.stream().findFirst().ifPresent(model::useCalibration));
  }
}
