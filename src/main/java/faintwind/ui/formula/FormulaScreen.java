package faintwind.ui.formula;

import faintwind.job.formula.MeasuredKnown;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.FoldingTable;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.PlotCard;
import faintwind.ui.part.Rows;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import faintwind.ui.work.Running;
import java.util.List;
import java.util.Optional;
import javafx.fxml.FXML;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The verdict as title, measured and fitted, the straight-line look smaller beside it. */
public final class FormulaScreen extends DataScreen {
  private static final double MAIN_EM = 26;
  private static final double ERRORS_EM = 13;
  private static final double RECORDING_EM = 18;
  private static final double MORE_EM = 14;

  private final FormulaModel model;
  private final VBox margin = Boxes.column("data-body");

  @FXML private HBox head;
  @FXML private Label title;
  @FXML private Label how;
  @FXML private VBox problems;
  @FXML private VBox measured;
  @FXML private VBox plots;

  public FormulaScreen(Desk desk, FormulaModel model) {
    super(desk, model.next());
    this.model = model;
    margin.setId("formula-margin");
    how.managedProperty().bind(how.textProperty().isNotEmpty());
    withMargin(margin);
    filledBy(
        model.view(),
        now -> {
          fill(now);
          Boxes.present(margin, !margin.getChildren().isEmpty());
          ask();
        });
    filledBy(model.known(), known -> ask());
    whenLeft(model::left);
  }

  @Override
  public Optional<Running> work() {
    return model.work();
  }

  private void fill(FormulaModel.View now) {
    problems
        .getChildren()
        .setAll(
            Rows.problems(
                now.problems(), now.stage() == FormulaModel.Stage.REFUSED, desk().words()));
    Optional<FormulaWords> said =
        now.made().map(made -> new FormulaWords(desk().words(), made.formula()));
    plots.getChildren().clear();
    margin.getChildren().clear();
    head.getChildren().setAll(title);
    now.gate()
        .flatMap(
            gate ->
                now.made()
                    .map(made -> made.formula().calibration().warnings())
                    .map(warnings -> new BuildGateBox(gate, warnings, model, desk().words())))
        .ifPresent(problems.getChildren()::add);
    boolean fitted = now.stage() == FormulaModel.Stage.FITTED && said.isPresent();
    if (fitted) {
      fill(said.get(), now.drawing());
      return;
    }
    title.setText(
        text(
            switch (now.stage()) {
              case NOTHING, FITTED -> "formula.title.nothing";
              case READY -> "formula.title.ready";
              case FITTING -> "formula.title.fitting";
              case REFUSED -> "formula.title.refused";
            }));
    how.setText(
        switch (now.stage()) {
          case NOTHING -> text("formula.nothing");
          case FITTING -> text("formula.fitting");
          case READY, FITTED, REFUSED -> "";
        });
    model
        .work()
        .filter(work -> now.stage() == FormulaModel.Stage.FITTING)
        .ifPresent(work -> plots.getChildren().add(new FitCurve(desk(), work)));
  }

  /**
   * Asks when and with what the runs were measured before they are fitted: not where the formula
   * that is shown was made from them.
   */
  private void ask() {
    FormulaModel.View now = model.view().get();
    Optional<MeasuredKnown> known = model.known().get();
    boolean fits =
        switch (now.stage()) {
          case READY, REFUSED -> true;
          case FITTED -> known.filter(k -> !k.isOf(now.made().orElseThrow())).isPresent();
          case NOTHING, FITTING -> false;
        };
    Boxes.present(measured, fits);
    if (measured.getChildren().isEmpty()) {
      known.ifPresent(
          k -> measured.getChildren().setAll(new MeasuredForm(desk(), k, model::measured)));
    }
  }

  private void fill(FormulaWords said, boolean drawing) {
    title.setText(said.title());
    how.setText(said.how());
    head.getChildren().setAll(new MarkShape(said.mark(), said.title()), title);
    // Without a straight-line look the formula has the whole width, and the reason stands below.
    Node loss = wide(card("formula-loss", said.loss(), MAIN_EM), 1.8);
    Node pair =
        said.straightLine()
            .<Node>map(
                figure -> new PlotPair(loss, wide(card("formula-straight", figure, MAIN_EM), 1)))
            .orElseGet(() -> Boxes.column("plot-pair", loss, Rows.soft(said.noStraightLine())));
    plots.getChildren().setAll(pair, card("formula-errors", said.errors(), ERRORS_EM));
    plots.getChildren().add(Words.label(text("formula.recordings"), "tell", "semibold"));
    plots.getChildren().add(Rows.soft(text("formula.recordings.how")));
    said.recordingsNote(drawing).ifPresent(note -> plots.getChildren().add(Rows.soft(note)));
    List<PlotFigure> recordings = said.recordings();
    for (int i = 0; i < recordings.size(); i++) {
      plots
          .getChildren()
          .add(card("formula-recording-" + (i + 1), recordings.get(i), RECORDING_EM));
    }
    if (!recordings.isEmpty() && model.table().isPresent()) {
      model
          .view()
          .get()
          .made()
          .map(made -> new LeaveOutBox(desk(), model, made))
          .ifPresent(plots.getChildren()::add);
    }
    plots.getChildren().add(Words.label(text("formula.more"), "tell", "semibold"));
    plots
        .getChildren()
        .add(
            new PlotPair(
                wide(card("formula-u95", said.u95(), MORE_EM), 1),
                wide(card("formula-response", said.response(), MORE_EM), 1)));
    fillMargin(said);
  }

  private PlotCard card(String id, PlotFigure figure, double height_em) {
    return FigureCard.of(id, figure, height_em, desk());
  }

  /** Shares the width of a row by weight. */
  private static Node wide(PlotCard card, double weight) {
    Boxes.grow(card);
    card.setStyle("-fx-min-width: 17em; -fx-pref-width: " + 20 * weight + "em;");
    return card;
  }

  private void fillMargin(FormulaWords said) {
    VBox equation = Boxes.column("equation", Words.label(text("formula.equation")));
    Label typed = Words.label(said.typed(), "fine");
    typed.setId("formula-typed");
    margin
        .getChildren()
        .setAll(
            Words.label(text("formula.one-line"), "tell", "semibold"),
            equation,
            Words.label(text("formula.typed"), "semibold"),
            typed,
            Words.label(said.valid(), "fine", "soft"));
    model
        .view()
        .get()
        .made()
        .filter(made -> !made.formula().calibration().rehearsal())
        .map(made -> new ExportBox(desk(), model.ways(), made.file()))
        .ifPresent(margin.getChildren()::add);
    margin.getChildren().add(Words.label(text("formula.sure"), "tell", "semibold"));
    margin.getChildren().add(howSure(said));
    said.beyond().ifPresent(text -> margin.getChildren().add(Words.label(text, "fine", "soft")));
    Label rise = Words.label(text("calibration-page.rise.note"), "fine", "soft");
    rise.setId("formula-rise-note");
    margin.getChildren().add(rise);
    margin.getChildren().add(Words.label(text("formula.checks"), "tell", "semibold"));
    VBox checks = new VBox();
    checks.setId("formula-checks");
    for (FormulaWords.CheckLine line : said.checks()) {
      checks.getChildren().add(Rows.check(line.mark(), line.name(), line.detail(), desk().words()));
    }
    checks.getChildren().addAll(Rows.problems(said.warnings(), false, desk().words()));
    margin.getChildren().add(checks);
    margin.getChildren().add(Words.label(text("formula.parameters"), "tell", "semibold"));
    margin.getChildren().add(parameters(said));
  }

  private Node parameters(FormulaWords said) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("fact-table");
    List<FormulaWords.ParameterLine> lines = said.parameters();
    for (int i = 0; i < lines.size(); i++) {
      Label name = Words.label(lines.get(i).name(), "semibold");
      Label value = Words.whole(lines.get(i).value(), "medium");
      value.setMinWidth(Region.USE_PREF_SIZE);
      grid.addRow(i, name, value, Words.label(lines.get(i).range(), "fine", "soft"));
      GridPane.setHalignment(value, HPos.RIGHT);
    }
    WhyLink why =
        new WhyLink(
            "formula-why",
            text("formula.parameters.why"),
            said::why,
            desk().notes(),
            desk().words());
    return Boxes.column("fact-block row", grid, why);
  }

  private Node howSure(FormulaWords said) {
    FoldingTable table = new FoldingTable("formula-sure", "fact-table");
    table.row(
        List.of(
            Words.label(text("formula.sure.speed"), "column-head"),
            Words.label(text("formula.sure.u95"), "column-head"),
            Words.label(text("formula.sure.metal"), "column-head"),
            Words.label(text("formula.sure.estimate"), "column-head")));
    for (FormulaWords.SureLine line : said.howSure()) {
      table.row(
          List.of(
              Words.whole(line.speed()),
              Words.whole(line.u95()),
              Words.whole(line.metal()),
              Words.whole(line.estimate())));
    }
    return table;
  }
}
