package faintwind.ui.turntable;

import faintwind.calibration.run.Direction;
import faintwind.guide.checklist.Caution.Ask;
import faintwind.record.Event;
import faintwind.report.figure.RecordingPlots;
import faintwind.report.figure.RecordingTrace;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.fold.Prose;
import faintwind.ui.fold.ProseButton;
import faintwind.ui.frame.ChosenWay;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.listen.ListenPane;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.FileDrop;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Takes the turntable's recordings and shows them, after the caution of the spinning arm. */
public final class TurntableScreen extends DataScreen {
  public static final String CAUTION = "spinning-arm";

  private final TurntableModel model;
  private final Consumer<Event> enter;
  private Optional<LiveTablePane> pane = Optional.empty();
  private Optional<TurntablePlanView> planner = Optional.empty();
  private final VBox path = Boxes.column("path run-list");
  private final VBox typedRuns = Boxes.column("typed-runs");
  private final VBox typedBox = Boxes.column("data-body");
  private final Label recording = new Prose();
  private final ChosenWay ways;

  @FXML private Label title;
  @FXML private VBox cautions;
  @FXML private VBox head;
  @FXML private VBox live;
  @FXML private VBox body;
  @FXML private Hyperlink wayPlan;
  @FXML private Hyperlink wayLive;
  @FXML private Hyperlink wayFile;
  @FXML private Hyperlink wayTyped;
  @FXML private VBox bring;
  @FXML private VBox problems;
  @FXML private VBox plots;

  /**
   * A screen on a model.
   *
   * @param cautionReadBy who read the caution and when; empty where nobody has
   * @param enter keeps an event in the journal
   */
  public TurntableScreen(
      Desk desk, TurntableModel model, Optional<String> cautionReadBy, Consumer<Event> enter) {
    super(desk, model.next());
    this.model = model;
    this.enter = enter;
    path.setId("turntable-path");
    cautionReadBy.ifPresent(who -> model.cautionRead());
    fillCaution(cautionReadBy.orElse(""));
    buildTyped();
    ways = new ChosenWay(bring, wayPlan, wayLive, wayFile, wayTyped);
    buildWays();
    withPath(path);
    filledBy(model.view(), this::fill);
    filledBy(model.live(), this::showLive);
    whenLeft(() -> pane.ifPresent(LiveTablePane::stop));
  }

  /** With a way to turn the arm while this program listens; it is offered first. */
  public TurntableScreen withLive(LiveStart liveStart) {
    whenLeft(liveStart::left);
    Boxes.present(wayLive, true);
    wayLive.setOnAction(event -> ways.open(wayLive, liveStart.node()));
    if (model.view().get().table().isEmpty()) {
      ways.open(wayLive, liveStart.node());
    }
    return this;
  }

  /** With a planner; it needs no arm that is safe yet. */
  public TurntableScreen withPlan(TurntablePlanView plan) {
    planner = Optional.of(plan);
    Boxes.present(wayPlan, true);
    model.planWith(new Act("turntable-to-plan", text("turntable.way.plan"), wayPlan::fire));
    plan.leadsTo(new Act("turntable-plan-guide", text("turntable.plan.guide"), wayLive::fire));
    wayPlan.setOnAction(event -> ways.open(wayPlan, plan.node()));
    bring.getChildren().addListener((ListChangeListener<Node>) change -> sayWay(plan));
    plan.next().addListener((property, was, now) -> sayWay(plan));
    Hyperlink follow =
        Words.link("turntable-typed-follow", text("turntable.typed.follow"), () -> follow(plan));
    follow.visibleProperty().bind(plan.planned());
    follow.managedProperty().bind(plan.planned());
    typedBox.getChildren().add(1, follow);
    return this;
  }

  @Override
  public Optional<Unsaved> unsaved() {
    return planner.flatMap(TurntablePlanView::unsaved);
  }

  /** Lays out a row for each planned spin. */
  private void follow(TurntablePlanView plan) {
    int before = model.typed().rows().size();
    model.typed().follow(plan.spins());
    for (int i = before; i < model.typed().rows().size(); i++) {
      showRow(i);
    }
  }

  /** While the planner is open, or runs are typed, that has the Next line. */
  private void sayWay(TurntablePlanView plan) {
    Optional<Next> now = Optional.empty();
    if (bring.getChildren().contains(plan.node())) {
      now = Optional.of(plan.next().getValue());
    } else if (bring.getChildren().contains(typedBox)) {
      Act check = new Act("turntable-check", text("turntable.typed.check"), model::openTyped);
      now = Optional.of(Next.say(Mark.DOING, text("turntable.next.typed"), check));
    }
    model.planning(now);
  }

  /** With ways to listen to the logger and to read a foreign recording. */
  public TurntableScreen withLogger(LoggerWays loggers) {
    HBox links =
        Boxes.row(
            "ways",
            Words.link("turntable-listen", text("turntable.listen"), () -> listen(loggers)),
            Words.link("turntable-foreign", text("turntable.foreign"), () -> askForeign(loggers)));
    typedBox.getChildren().add(1, links);
    model.typed().recording().addListener((property, was, now) -> ways.open(wayTyped, typedBox));
    filledBy(
        model.view(),
        now ->
            model
                .foreign()
                .ifPresent(
                    log -> loggers.foreign(bring, log, profile -> model.foreignIs(profile))));
    if (loggers.isListening()) {
      listen(loggers);
    }
    return this;
  }

  private void listen(LoggerWays loggers) {
    ListenPane listening = loggers.listening(Optional::empty);
    whenLeft(listening::left);
    ways.open(wayTyped, listening);
  }

  private void askForeign(LoggerWays loggers) {
    desk()
        .files()
        .open(text("turntable.foreign"), text("listen.file-kind"), "*.*")
        .ifPresent(log -> loggers.foreign(bring, log, profile -> model.recorded(log, profile)));
  }

  /** While a session is turned it has the sheet and the path to itself. */
  private void showLive(Optional<LiveTableModel> session) {
    pane.ifPresent(LiveTablePane::stop);
    pane = session.map(s -> new LiveTablePane(desk(), s));
    boolean turns = pane.isPresent();
    for (VBox part : List.of(head, body)) {
      Boxes.present(part, !turns && (part == head || model.isCautionRead()));
    }
    Boxes.present(live, turns);
    live.getChildren().setAll(pane.map(LiveTablePane::sheet).stream().toList());
    if (turns) {
      path.getChildren().setAll(pane.orElseThrow().path());
    } else {
      fillPath();
    }
  }

  @Override
  public boolean space() {
    return pane.map(LiveTablePane::tap).orElse(false);
  }

  private void buildWays() {
    Boxes.present(wayLive, false);
    wayFile.setOnAction(event -> ways.open(wayFile, fileDrop()));
    wayTyped.setOnAction(event -> ways.open(wayTyped, typedBox));
    ways.open(wayFile, fileDrop());
  }

  private void fillCaution(String read) {
    CautionCard.Content caution =
        new CautionCard.Content(
            CAUTION,
            text("turntable.caution.kind"),
            text("turntable.caution.text"),
            text("turntable.caution.source"),
            read,
            false,
            Optional.of(
                new Ask(
                    text("turntable.caution.ask"),
                    text("turntable.caution.right"),
                    List.of(text("turntable.caution.not-1"), text("turntable.caution.not-2")))));
    cautions.getChildren().setAll(new CautionCard(caution, desk().words(), this::cautionRead));
    if (!caution.isOpen() && head.getChildren().remove(cautions)) {
      body.getChildren().add(cautions); // what was read stays, below what it kept closed
    }
    Boxes.present(body, !caution.isOpen());
  }

  private void cautionRead() {
    enter.accept(new Event.CautionAcknowledged(CAUTION));
    model.cautionRead();
    fillCaution(text("turntable.caution.just-read"));
  }

  private Node fileDrop() {
    return new FileDrop(
        "turntable-drop",
        text("turntable.drop"),
        text("turntable.drop.choose"),
        () ->
            desk()
                .files()
                .open(
                    text("turntable.drop.choose"),
                    text("turntable.kind"),
                    "*.csv",
                    "*.txt",
                    "*.xlsx",
                    "*.ods")
                .ifPresent(model::open),
        files -> files.stream().findFirst().ifPresent(model::open));
  }

  private void buildTyped() {
    typedRuns.setId("turntable-typed");
    Button choose = button("turntable-recording", "turntable.typed.recording");
    choose.setOnAction(
        event ->
            desk()
                .files()
                .open(
                    text("turntable.typed.recording"),
                    text("turntable.kind"),
                    "*.csv",
                    "*.txt",
                    "*.xlsx",
                    "*.ods")
                .ifPresent(file -> model.typed().recording().set(Optional.of(file))));
    model.typed().recording().addListener((property, was, now) -> sayRecording(now));
    sayRecording(model.typed().recording().get());
    Button add = button("turntable-add-run", "turntable.typed.add");
    add.setOnAction(event -> addRow());
    Button check = button("turntable-check-typed", "turntable.typed.check");
    check.setOnAction(event -> model.openTyped());
    typedBox
        .getChildren()
        .setAll(
            Rows.soft(text("turntable.typed.how")),
            choose,
            recording,
            typedRuns,
            add,
            new TypedFlowsBox(desk(), model.typed().flows()),
            check);
    for (int i = 0; i < model.typed().rows().size(); i++) {
      showRow(i);
    }
  }

  private void sayRecording(Optional<Path> file) {
    recording.setText(
        file.map(f -> String.valueOf(f.getFileName()))
            .orElse(text("turntable.typed.recording-none")));
    recording.getStyleClass().setAll("label", file.isPresent() ? "mono" : "soft");
  }

  private Button button(String id, String key) {
    Button button = new ProseButton(text(key));
    button.setId(id);
    button.getStyleClass().add("quiet");
    return button;
  }

  private void addRow() {
    model.typed().addRow();
    showRow(model.typed().rows().size() - 1);
  }

  private void showRow(int index) {
    TypedRunsModel.Row row = model.typed().rows().get(index);
    List<String> names = List.of("radius", "turns", "time", "start", "stop");
    FoldingRow run = Boxes.row("typed-run");
    for (int i = 0; i < names.size(); i++) {
      String name = text("turntable.typed." + names.get(i));
      String id = "typed-" + (index + 1) + "-" + names.get(i);
      run.getChildren().add(named(name, new NumberField(id, name, row.fields().get(i))));
    }
    ComboBox<String> direction = new FoldingChoice<>();
    direction.setId("typed-" + (index + 1) + "-direction");
    direction.getItems().addAll("", text("plot.cw"), text("plot.ccw"));
    direction.setAccessibleText(text("turntable.typed.direction"));
    direction
        .getSelectionModel()
        .selectedIndexProperty()
        .addListener((property, was, now) -> row.direction().set(direction(now.intValue())));
    row.direction().addListener((property, was, now) -> select(direction, now));
    select(direction, row.direction().get());
    run.getChildren().add(named(text("turntable.typed.direction"), direction));
    typedRuns.getChildren().add(run);
  }

  private static Node named(String name, Node field) {
    return Boxes.column("typed-field", Words.whole(name, "column-head"), field);
  }

  private static void select(ComboBox<String> box, Optional<Direction> direction) {
    box.getSelectionModel().select(direction.map(d -> d == Direction.CW ? 1 : 2).orElse(0));
  }

  private static Optional<Direction> direction(int index) {
    return index <= 0 ? Optional.empty() : Optional.of(index == 1 ? Direction.CW : Direction.CCW);
  }

  private void fill(TurntableModel.View now) {
    title.setText(model.title());
    problems.getChildren().setAll(Rows.problems(now.problems(), now.refused(), desk().words()));
    plots.getChildren().clear();
    RecordingPlots drawing = new RecordingPlots(desk().words());
    List<RecordingTrace> traces = RecordingPlots.traces(now.runs());
    if (!traces.isEmpty()) {
      bring.getChildren().clear(); // the runs need the room; the links above bring it back
    }
    for (int i = 0; i < traces.size(); i++) {
      plots
          .getChildren()
          .add(
              FigureCard.of(
                  "recording-" + (i + 1),
                  drawing.recording(traces.get(i)),
                  traces.get(i).spins().size() > 1 ? 24 : 12,
                  desk()));
    }
    fillPath();
  }

  private void fillPath() {
    path.getChildren().clear();
    Label head = Words.label(text("turntable.path"), "tell", "semibold");
    path.getChildren().add(head);
    model.whose().ifPresent(text -> path.getChildren().add(Rows.soft(text)));
    List<TurntableModel.RunLine> lines = model.lines();
    if (lines.isEmpty()) {
      path.getChildren().add(Rows.soft(text("turntable.path.nothing")));
    }
    for (TurntableModel.RunLine line : lines) {
      path.getChildren().add(Rows.run(line.mark(), line.name(), line.detail(), desk().words()));
    }
    path.getChildren().add(Rows.run(Mark.READY, text("turntable.path.fit"), "", desk().words()));
  }
}
