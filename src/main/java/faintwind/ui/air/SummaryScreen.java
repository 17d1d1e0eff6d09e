package faintwind.ui.air;

import faintwind.job.air.Summary;
import faintwind.job.air.SummaryPicture;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.FileDrop;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.PlotCard;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.stream.Stream;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The figures of a converted log: hour by hour, shares of the time, all of it in words. */
public final class SummaryScreen extends DataScreen {
  private static final double FIGURE_EM = 26;

  private final SummaryModel model;
  private final VBox margin = Boxes.column("data-body");

  @FXML private VBox pages;
  @FXML private Label title;
  @FXML private VBox problems;
  @FXML private VBox bring;
  @FXML private FlowPane wanted;
  @FXML private VBox figures;

  /**
   * A screen.
   *
   * @param links to the other pages
   */
  public SummaryScreen(Desk desk, SummaryModel model, Node links) {
    super(desk, model.next());
    this.model = model;
    margin.setId("summary-margin");
    pages.getChildren().setAll(links);
    wanted.getStyleClass().add("plan-fields");
    wanted
        .getChildren()
        .setAll(
            number("summary-calm", "air.summary.calm", model.calm()),
            number("summary-limit", "air.summary.limit", model.limit()));
    withMargin(margin);
    filledBy(model.view(), this::fill);
  }

  /** Once there are figures they have the room, and another log is a link away. */
  private Node ways(boolean shown) {
    return shown
        ? Words.link("summary-another", text("air.log.choose"), this::ask)
        : new FileDrop(
            "summary-drop",
            text("air.summary.drop"),
            text("air.log.choose"),
            this::ask,
            files -> files.stream().findFirst().ifPresent(model::open));
  }

  private Node number(String id, String key, NumberModel number) {
    String about = text(key);
    return Boxes.column(
        "plan-field optional", Words.label(about), new NumberField(id, about, number));
  }

  private void ask() {
    desk()
        .files()
        .open(text("air.log.choose"), text("air.log.kind"), "*.csv")
        .ifPresent(model::open);
  }

  private void fill(SummaryModel.View now) {
    title.setText(
        now.summary().isPresent() ? text("air.summary.of", now.name()) : text("air.summary.title"));
    problems
        .getChildren()
        .setAll(Rows.problems(now.problems(), now.summary().isEmpty(), desk().words()));
    bring.getChildren().setAll(ways(now.summary().isPresent()));
    Boxes.present(wanted, now.summary().isPresent() || !now.name().isEmpty());
    figures.getChildren().setAll(now.summary().stream().flatMap(this::drawn).toList());
    margin.getChildren().setAll(Words.label(text("field.figures"), "tell", "semibold"));
    now.summary()
        .ifPresent(
            summary ->
                summary
                    .overall(desk().words())
                    .forEach(line -> margin.getChildren().add(Words.label(line))));
  }

  private Stream<Node> drawn(Summary summary) {
    List<String> heads =
        Stream.of("from", "mean", "u95", "highest", "faint")
            .map(head -> text("air.summary.head." + head))
            .toList();
    TableView<List<String>> hours =
        PlotCard.table(new PlotCard.Table(heads, summary.hours(desk().words())));
    hours.setId("summary-hours");
    return Stream.of(
        FigureCard.of(
            "summary-plot", SummaryPicture.figure(summary, desk().words()), FIGURE_EM, desk()),
        Words.label(text("air.summary.hours"), "tell", "semibold"),
        hours);
  }
}
