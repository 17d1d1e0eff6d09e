package faintwind.ui.air;

import faintwind.job.air.SurveyText;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A list of places that is gone along with the instrument, and their ranks beside it. */
public final class SurveyScreen extends DataScreen {
  private static final int NAME_COLUMNS = 14;

  private final SurveyModel model;
  private final ReadingsView rows;
  private final VBox margin = Boxes.column("data-body");

  @FXML private VBox pages;
  @FXML private VBox problems;
  @FXML private VBox listening;
  @FXML private VBox readings;

  /**
   * A screen.
   *
   * @param links to the other pages
   */
  public SurveyScreen(Desk desk, SurveyModel model, Node links) {
    super(desk, model.next());
    this.model = model;
    rows = new ReadingsView(desk, model, this::name);
    margin.setId("survey-margin");
    pages.getChildren().setAll(links);
    Button add = Words.button("survey-add", text("air.survey.add"), this::add);
    add.getStyleClass().add("quiet");
    readings.getChildren().setAll(rows, add);
    withMargin(margin);
    filledBy(model.view(), this::fill);
  }

  /** With the instrument listened to. */
  public SurveyScreen withLive(LiveAirPane pane) {
    listening.getChildren().setAll(pane);
    whenLeft(pane::left);
    return this;
  }

  private void add() {
    model.addPlace();
    rows.fill();
  }

  private void remove(PlaceRow row) {
    model.remove(row);
    rows.fill();
  }

  private Node name(PlaceRow row) {
    int number = model.readings().rows().indexOf(row) + 1;
    String id = "survey-place-" + number;
    TextField field =
        Fields.field(id, "air.column.place", row.name(), NAME_COLUMNS, desk().words());
    boolean again = row == model.again();
    field.setDisable(again);
    VBox named =
        Boxes.column(
            "air-name",
            Words.label(text(again ? "air.column.again" : "air.column.place"), "column-head"),
            field);
    if (model.isRemovable(row)) {
      named
          .getChildren()
          .add(Words.link("survey-remove-" + number, text("air.survey.remove"), () -> remove(row)));
    }
    return named;
  }

  private void fill(SurveyModel.View now) {
    problems.getChildren().setAll(Rows.problems(now.problems(), now.refused(), desk().words()));
    Boxes.present(listening, !model.readings().isByLog());
    rows.refresh();
    margin.getChildren().setAll(Words.label(text("air.survey.ranks"), "tell", "semibold"));
    if (now.ranked().isEmpty()) {
      margin.getChildren().add(Rows.soft(text("air.survey.ranks-none")));
    }
    now.ranked()
        .ifPresent(
            done ->
                new SurveyText(desk().words())
                    .lines(done)
                    .forEach(line -> margin.getChildren().add(Words.label(line))));
  }
}
