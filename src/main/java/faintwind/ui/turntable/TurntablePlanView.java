package faintwind.ui.turntable;

import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.run.Direction;
import faintwind.message.Numerals;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.fold.FoldingTable;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Next;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The planner of the turntable: the bench and the wish, both plans side by side, the steps. */
public final class TurntablePlanView {
  private final Desk desk;
  private final TurntablePlanModel model;
  private final VBox box = Boxes.column("data-body plan-body");
  private final VBox result = Boxes.column("data-body");

  public TurntablePlanView(Desk desk, TurntablePlanModel model) {
    this.desk = desk;
    this.model = model;
    box.setId("turntable-plan");
    box.getChildren().addAll(Rows.soft(text("turntable.plan.how")), numbers(), result);
    model.changing().addListener((property, was, now) -> fill());
    model.view().addListener((property, was, now) -> fill());
    model.form().addListener((property, was, now) -> fill());
    fill();
  }

  Node node() {
    return box;
  }

  /** What to do now. */
  ObservableValue<Next> next() {
    return model.next();
  }

  /** What a plan that is kept leads to. */
  void leadsTo(Act begin) {
    model.leadsTo(begin);
  }

  /** A plan that was made and not kept. */
  Optional<Unsaved> unsaved() {
    Act keep = new Act("turntable-plan-keep", text("turntable.plan.keep"), model::keep);
    return model.isUnsaved()
        ? Optional.of(
            new Unsaved(
                text("turntable.plan.unsaved"), Optional.of(keep), text("window.unsaved.drop")))
        : Optional.empty();
  }

  /** Whether there is a plan. */
  ObservableBooleanValue planned() {
    return Bindings.createBooleanBinding(() -> model.shown().isPresent(), model.view());
  }

  /** The spins of the plan that is shown. */
  List<PlannedSpin> spins() {
    return model.shown().map(Plan::spins).orElse(List.of());
  }

  private Node numbers() {
    VBox numbers =
        new VBox(
            fields("turntable.plan.arm", armFields()), fields("turntable.plan.wish", wishFields()));
    numbers.getStyleClass().add("data-body");
    numbers.visibleProperty().bind(model.changing());
    numbers.managedProperty().bind(model.changing());
    return numbers;
  }

  private Node fields(String head, List<Node> nodes) {
    FlowPane flow = new FlowPane();
    flow.getStyleClass().add("plan-fields");
    flow.getChildren().addAll(nodes);
    return Boxes.column("plan-part", Words.label(text(head), "semibold"), flow);
  }

  private List<Node> armFields() {
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i < model.radii().size(); i++) {
      String about =
          text(i == 0 ? PlanField.RADIUS.field().nameKey() : "turntable.plan.radius." + i);
      String id = i == 0 ? "plan-radius" : "plan-radius-" + (i + 1);
      nodes.add(labelled(about, new NumberField(id, about, model.radii().get(i))));
    }
    nodes.add(field(PlanField.U_RADIUS));
    ComboBox<String> way = new FoldingChoice<>();
    way.setId("turntable-plan-way");
    List<DataWay.Kind> kinds = Arrays.asList(DataWay.Kind.values());
    kinds.forEach(kind -> way.getItems().add(text("turntable.plan.way." + kind.word())));
    way.setAccessibleText(text("turntable.plan.way"));
    way.getSelectionModel().select(kinds.indexOf(model.way().get()));
    way.getSelectionModel()
        .selectedIndexProperty()
        .addListener((property, was, now) -> model.way().set(kinds.get(now.intValue())));
    model
        .way()
        .addListener((property, was, now) -> way.getSelectionModel().select(kinds.indexOf(now)));
    nodes.add(labelled(text("turntable.plan.way"), way));
    Node turns = field(PlanField.CABLE_TURNS);
    turns.visibleProperty().bind(model.way().isEqualTo(DataWay.Kind.CABLE));
    turns.managedProperty().bind(turns.visibleProperty());
    nodes.add(turns);
    nodes.add(field(PlanField.BATTERY));
    return nodes;
  }

  private List<Node> wishFields() {
    List<Node> nodes = new ArrayList<>();
    TurntablePlanModel.NUMBERS.stream()
        .filter(f -> f.path().startsWith("wish"))
        .forEach(f -> nodes.add(field(f)));
    CheckBox both = new CheckBox(text("turntable.plan.both-ways"));
    both.setId("turntable-plan-both-ways");
    both.selectedProperty().bindBidirectional(model.bothWays());
    nodes.add(both);
    return nodes;
  }

  private Node field(PlanField field) {
    String about = text(field.field().nameKey());
    String id = "plan-" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
    return labelled(about, new NumberField(id, about, model.number(field)));
  }

  private static Node labelled(String about, Node node) {
    return Boxes.column("plan-field", Words.label(about, "column-head"), node);
  }

  private void fill() {
    TurntablePlanModel.View now = model.view().get();
    result.getChildren().clear();
    result.getChildren().addAll(Rows.problems(now.problems(), now.refused(), desk.words()));
    now.planned().ifPresent(this::fill);
  }

  private void fill(PlannedSession planned) {
    HBox sides = Boxes.row("plan-sides", side(planned.choice().staircase()));
    planned.choice().separate().ifPresent(separate -> sides.getChildren().add(side(separate)));
    if (!model.changing().get()) {
      result
          .getChildren()
          .add(
              Words.link(
                  "turntable-plan-change",
                  text("turntable.plan.change"),
                  () -> model.changing().set(true)));
    }
    result.getChildren().add(sides);
    model.shown().ifPresent(plan -> result.getChildren().addAll(steps(plan), errors(plan)));
  }

  /** One of the two plans in a few words; a click shows its steps. */
  private Node side(Plan plan) {
    String key = plan.form().name().toLowerCase(Locale.ROOT);
    boolean shown = model.shown().filter(p -> p.form() == plan.form()).isPresent();
    VBox side = Boxes.column("plan-side");
    side.getChildren()
        .addAll(
            Words.label(text("turntable.plan.form." + key), "tell", "semibold"),
            Words.label(
                text(
                    "turntable.plan.sum",
                    plan.spins().size(),
                    hours(plan.total_s()),
                    percent(plan.promise().mean()),
                    plan.lessons())),
            Rows.soft(text("turntable.plan.form." + key + ".why")));
    side.getChildren()
        .add(
            shown
                ? Rows.soft(text("turntable.plan.shown"))
                : Words.link(
                    "turntable-plan-" + key,
                    text("turntable.plan.show"),
                    () -> model.form().set(plan.form())));
    return side;
  }

  private Node steps(Plan plan) {
    FoldingTable table = new FoldingTable("turntable-plan-steps", "plan-steps");
    table.row(
        Stream.of("begins", "radius", "beat", "turns", "way", "lasts")
            .map(head -> Words.label(text("turntable.plan.head." + head), "column-head"))
            .toList());
    int lesson = plan.steps().get(0).lesson();
    for (PlannedStep step : plan.steps()) {
      if (step.lesson() != lesson) {
        lesson = step.lesson();
        table.row(List.of(Words.label(text("turntable.plan.lesson", lesson), "semibold")));
      }
      table.row(cells(step).stream().map(Words::label).toList());
    }
    return table;
  }

  private List<String> cells(PlannedStep step) {
    String begins = Numerals.clock(step.start_s());
    String lasts = Numerals.clock(step.duration_s());
    String what = text("runsheet.what." + step.kind().name().toLowerCase(Locale.ROOT));
    return step.spin()
        .map(
            spin ->
                List.of(
                    begins
                        + "  "
                        + text("turntable.run.speed", Numerals.places(spin.speed_m_s(), 3)),
                    Numerals.places(1000 * spin.radius_m().value(), 0) + " mm",
                    text("runsheet.beat", spin.beat().perMinute(), spin.beat().aTurn()),
                    String.valueOf(spin.turns()),
                    text(spin.direction() == Direction.CW ? "plot.cw" : "plot.ccw"),
                    lasts))
        .orElse(List.of(begins + "  " + what, "", "", "", "", lasts));
  }

  /** The promise by speed, in one line of pairs. */
  private Node errors(Plan plan) {
    VBox lines = Boxes.column("plan-part", Words.label(text("turntable.plan.errors"), "semibold"));
    FlowPane flow = new FlowPane();
    flow.getStyleClass().add("plan-fields");
    for (Promise.AtSpeed at : plan.promise().speeds()) {
      flow.getChildren()
          .add(
              Words.label(
                  text("turntable.plan.at", Numerals.places(at.speed_m_s(), 2), percent(at.u()))));
    }
    lines.getChildren().addAll(flow, Rows.soft(text("plan.digits")));
    return lines;
  }

  private static String hours(double seconds) {
    long minutes = Math.round(seconds / 60);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  private static String percent(double share) {
    return Numerals.places(100 * share, 1);
  }

  private String text(String key, Object... arguments) {
    return desk.words().text(key, arguments);
  }
}
