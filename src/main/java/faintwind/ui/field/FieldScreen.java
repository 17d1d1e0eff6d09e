package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.UsualAverage;
import faintwind.job.field.KeptLogs;
import faintwind.message.Numerals;
import faintwind.report.figure.FieldPlots;
import faintwind.report.plot.PlotLane;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.listen.ListenPane;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.FileDrop;
import faintwind.ui.part.Note;
import faintwind.ui.part.PlotCard;
import faintwind.ui.part.Rows;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.controlsfx.control.RangeSlider;

/** The day in a sentence, speed with its band, the raw record, one lane a flag. */
public final class FieldScreen extends DataScreen {
  private static final double HEIGHT_EM = 36;
  private static final double BAR_EM = 9;
  private static final double STRETCH_STEPS = 40;
  private static final Duration REST = Duration.millis(150);

  private final FieldModel model;
  private Optional<LoggerWays> logger = Optional.empty();
  private final VBox margin = Boxes.column("data-body");

  @FXML private Label title;
  @FXML private VBox kept;
  @FXML private VBox bring;
  @FXML private VBox problems;
  @FXML private VBox plots;

  public FieldScreen(Desk desk, FieldModel model) {
    super(desk, model.next());
    this.model = model;
    margin.setId("field-margin");
    withMargin(margin);
    filledBy(model.view(), this::fill);
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
      kept.getChildren().setAll(new WeekStrip(desk(), logs, model::open));
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
        .ifPresent(log -> ways.foreign(bring, log, profile -> model.open(log, profile)));
  }

  private void fill(FieldModel.View now) {
    problems
        .getChildren()
        .setAll(Rows.problems(now.problems(), now.look().isEmpty(), desk().words()));
    plots.getChildren().clear();
    margin.getChildren().clear();
    bring.getChildren().clear();
    if (now.look().isEmpty()) {
      title.setText(text("field.title.nothing"));
      bring.getChildren().setAll(now.calibration().isEmpty() ? calibrationDrop() : logDrop());
      if (now.calibration().isPresent()) {
        logger.ifPresent(this::addWays);
      }
      now.calibration().ifPresent(this::fillCalibration);
      return;
    }
    FieldWords said =
        new FieldWords(
            desk().words(),
            now.look().get(),
            now.findings().orElseThrow(),
            now.calibration().orElseThrow());
    title.setText(said.title());
    FieldPlots.Log whole = said.plot();
    plots.getChildren().setAll(stretch(said, whole), plot(whole));
    fillMargin(said);
    now.calibration().ifPresent(this::fillCalibration);
    Button another = Words.button("field-another", text("field.another"), () -> askLog());
    another.getStyleClass().add("quiet");
    margin.getChildren().add(another);
  }

  private PlotCard plot(FieldPlots.Log shown) {
    PlotCard card =
        FigureCard.of("field-plot", new FieldPlots(desk().words()).log(shown), HEIGHT_EM, desk());
    VBox.setVgrow(card, Priority.ALWAYS);
    return card;
  }

  /** Picks the stretch of the record that is drawn. */
  private Node stretch(FieldWords said, FieldPlots.Log whole) {
    PlotLane.Stretch all = whole.span();
    RangeSlider slider = new RangeSlider(all.from(), all.to(), all.from(), all.to());
    slider.setId("field-stretch");
    slider.setBlockIncrement((all.to() - all.from()) / STRETCH_STEPS);
    slider.setAccessibleText(text("field.stretch"));
    Label shown = Words.label(text("field.stretch"), "fine", "soft");
    PauseTransition rest = new PauseTransition(REST);
    rest.setOnFinished(
        event -> {
          double from = slider.getLowValue();
          double to = Math.max(slider.getHighValue(), from + slider.getBlockIncrement());
          shown.setText(said.stretch(whole.clock(), from, to));
          slider.setAccessibleText(shown.getText());
          FieldPlots.Log picked = whole.between(from, to);
          if (!picked.raw().isEmpty()) {
            plots.getChildren().set(1, plot(picked));
          }
        });
    InvalidationListener moved = property -> rest.playFromStart();
    slider.lowValueProperty().addListener(moved);
    slider.highValueProperty().addListener(moved);
    return new VBox(shown, slider);
  }

  private void addWays(LoggerWays ways) {
    HBox links =
        Boxes.row(
            "ways",
            Words.link("field-listen", text("field.listen"), () -> listen(ways)),
            Words.link("field-foreign", text("field.foreign"), () -> askForeign(ways)));
    bring.getChildren().add(links);
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
        .open(text("field.drop.choose"), text("turntable.kind"), "*.csv")
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

  private void fillMargin(FieldWords said) {
    margin.getChildren().add(Words.label(text("field.standouts"), "tell", "semibold"));
    for (FieldWords.Standout standout : said.standouts()) {
      VBox block = new VBox(Words.label(standout.name(), "bold"), Words.label(standout.text()));
      margin.getChildren().add(block);
    }
    margin.getChildren().add(Words.rule());
    margin.getChildren().add(Words.label(text("field.shares"), "tell", "semibold"));
    VBox shares = new VBox();
    said.shares().forEach(line -> shares.getChildren().add(share(line)));
    margin.getChildren().add(shares);
  }

  private static Node share(FieldWords.ShareLine line) {
    Label name = Words.plain(line.name(), "share-name");
    Region bar = new Region();
    bar.getStyleClass().add("share-bar");
    if (!line.usable()) {
      bar.getStyleClass().add("unusable");
    }
    bar.setStyle("-fx-pref-width: " + BAR_EM * line.share() + "em;");
    Region gap = Boxes.gap();
    Label pct = Words.plain(Math.round(100 * line.share()) + " %", "semibold");
    pct.setMinWidth(Region.USE_PREF_SIZE);
    return Boxes.row("share-row", name, bar, gap, pct);
  }

  private void fillCalibration(Calibration calibration) {
    margin.getChildren().add(Words.rule());
    Label head = Words.label(text("field.how"), "tell", "semibold");
    WhyLink why =
        new WhyLink(
            "field-why", text("field.how"), () -> why(calibration), desk().notes(), desk().words());
    Boxes.grow(head);
    HBox row = Boxes.row("row", head, why);
    margin.getChildren().add(row);
    String date =
        DateTimeFormatter.ofPattern("d MMMM yyyy", desk().words().locale())
            .format(calibration.origin().created());
    margin
        .getChildren()
        .add(
            Rows.soft(
                text("field.how.text", date, Numerals.places(UsualAverage.of(calibration), 0))));
  }

  private Note why(Calibration calibration) {
    return new Note(
        text("field.how"),
        text("field.why.text"),
        List.of(text(calibration.formula().equation())),
        text("field.why.floor", Numerals.places(calibration.performance().floor_m_s(), 2)),
        text("field.why.source"));
  }
}
