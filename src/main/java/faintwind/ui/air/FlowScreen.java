package faintwind.ui.air;

import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.InTheWay;
import faintwind.calibration.flow.Opening;
import faintwind.calibration.flow.Traverse;
import faintwind.guide.checklist.Caution.Ask;
import faintwind.job.air.FlowText;
import faintwind.job.air.OpeningGuide;
import faintwind.message.Numerals;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The flow through an opening: what it is, then its points with a drawing, then m³/h. */
public final class FlowScreen extends DataScreen {
  private final FlowModel model;
  private final FlowText words;
  private final VBox margin = Boxes.column("data-body");
  private Optional<OpeningGuide> laid = Optional.empty();
  private long unread;
  private Optional<ReadingsView> rows = Optional.empty();
  private Optional<OpeningDrawing> drawing = Optional.empty();

  @FXML private VBox pages;
  @FXML private Label title;
  @FXML private VBox cautions;
  @FXML private VBox problems;
  @FXML private VBox result;
  @FXML private VBox form;
  @FXML private VBox listening;
  @FXML private VBox readings;

  /**
   * A screen.
   *
   * @param links to the other pages
   */
  public FlowScreen(Desk desk, FlowModel model, Node links) {
    super(desk, model.next());
    this.model = model;
    this.words = new FlowText(desk.words());
    margin.setId("flow-margin");
    pages.getChildren().setAll(links);
    form.getChildren().setAll(new OpeningFormView(desk, model.form()));
    margin.setVisible(false);
    withMargin(margin);
    filledBy(model.view(), this::fill);
  }

  /** With the instrument listened to. */
  public FlowScreen withLive(LiveAirPane pane) {
    listening.getChildren().setAll(pane);
    whenLeft(pane::left);
    fill(model.view().get());
    return this;
  }

  private void fill(FlowModel.View now) {
    problems.getChildren().setAll(Rows.problems(now.problems(), now.refused(), desk().words()));
    boolean open = now.guide().isPresent() && now.unread() == 0;
    Boxes.present(form, now.guide().isEmpty());
    Boxes.present(cautions, now.guide().isPresent());
    Boxes.present(listening, open && !model.readings().isByLog());
    Boxes.present(readings, open);
    title.setText(
        now.guide().map(g -> words.opening(g.traverse())).orElse(text("air.opening.title")));
    boolean other = !now.guide().equals(laid);
    if (other) {
      laid = now.guide();
      lay();
    }
    if (other || now.unread() != unread) {
      unread = now.unread();
      now.guide().ifPresent(this::fillCautions);
      // the work begins at the caution, then at the first point
      Platform.runLater(() -> nextFocus().ifPresent(Node::requestFocus));
    }
    rows.ifPresent(ReadingsView::refresh);
    List<PlaceRow> places = model.readings().rows();
    boolean byLog = model.readings().isByLog();
    drawing.ifPresent(
        d ->
            d.show(
                i -> i < places.size() && places.get(i).isFilled(byLog),
                model.readings().next().map(places::indexOf).orElse(-1)));
    fillResult(now);
  }

  /** The rows and the drawing of an opening that was said just now. */
  private void lay() {
    rows = laid.map(guide -> new ReadingsView(desk(), model, row -> name(guide, row)));
    readings.getChildren().setAll(rows.stream().toList());
    drawing = laid.map(g -> new OpeningDrawing(g.traverse(), words.opening(g.traverse())));
    margin.getChildren().clear();
    margin.setVisible(laid.isPresent());
    drawing.ifPresent(margin.getChildren()::add);
    laid.ifPresent(this::fillMargin);
  }

  private Node name(OpeningGuide guide, PlaceRow row) {
    Traverse traverse = guide.traverse();
    FlowPoint point =
        traverse.points().stream()
            .filter(p -> p.name().equals(row.name().get()))
            .findFirst()
            .orElseThrow();
    Label said = Words.label(words.point(traverse.opening(), point), "semibold");
    return Boxes.column("air-name", Words.label(text("air.column.point"), "column-head"), said);
  }

  private void fillMargin(OpeningGuide guide) {
    InTheWay instrument = guide.instrument();
    Opening opening = guide.traverse().opening();
    margin.getChildren().add(Rows.soft(text("air.flow.how")));
    margin.getChildren().add(Words.rule());
    margin
        .getChildren()
        .add(
            Words.label(
                text(
                    "air.flow.filled",
                    percent(instrument.share(opening)),
                    percent(InTheWay.MOST_FILLED))));
    if (opening.shape().isSlot()) {
      margin
          .getChildren()
          .add(
              Words.label(
                  text(
                      "air.flow.slot",
                      mm(instrument.ball_m()),
                      mm(InTheWay.MOST_OF_SLOT * opening.narrow_m()))));
    }
    margin.getChildren().add(Rows.soft(words.rule(guide.traverse())));
  }

  private void fillCautions(OpeningGuide guide) {
    cautions.getChildren().setAll(model.cautions(guide).stream().map(this::caution).toList());
  }

  private Node caution(String id) {
    boolean hive = id.equals(FlowModel.HIVE_CAUTION);
    CautionCard.Content caution =
        new CautionCard.Content(
            id,
            text("caution.injure"),
            text(hive ? "flow.caution-hive" : "flow.caution"),
            text("air.caution.source"),
            model.readBy(id).orElse(""),
            false,
            Optional.of(ask(hive ? "flow.ask-hive." : "flow.ask-duct.")));
    return new CautionCard(caution, desk().words(), () -> model.read(id));
  }

  private Ask ask(String key) {
    return new Ask(
        text(key + "question"),
        text(key + "right"),
        List.of(text(key + "not-1"), text(key + "not-2")));
  }

  private void fillResult(FlowModel.View now) {
    result.getChildren().clear();
    now.measured()
        .ifPresent(
            measured -> {
              List<String> lines = words.result(measured.flow());
              result.getChildren().add(Words.label(words.sentence(measured.flow()), "title"));
              lines.stream()
                  .filter(line -> !line.equals(words.sentence(measured.flow())))
                  .forEach(line -> result.getChildren().add(Words.label(line)));
            });
  }

  private static String percent(double share) {
    return Numerals.digits(100 * share, 2);
  }

  private static String mm(double length_m) {
    return Numerals.shortest(1000 * length_m, 1);
  }
}
