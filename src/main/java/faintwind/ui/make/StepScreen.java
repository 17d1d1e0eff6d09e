package faintwind.ui.make;

import faintwind.job.record.PrintSteps.Extent;
import faintwind.job.record.PrintSteps.Wanted;
import faintwind.ui.fold.Heads;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Focus;
import faintwind.ui.frame.FxScreen;
import faintwind.ui.frame.Screen;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.GateList;
import faintwind.ui.part.Next;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One step: cautions, instruction, questions, readings, and one wash when something fails. */
public final class StepScreen implements Screen {
  private final Desk desk;
  private final StepModel model;
  private final OpenInstrument instrument;
  private final PhotoQuestion photo;
  private final StepPrinting printing;
  private final PathView path;
  private final StepAside aside;
  private final VBox sheet;
  private final StepRows rows;
  private String shownStep = "";
  private boolean shownCovered;
  private List<CautionCard.Content> shownCautions = List.of();
  private List<StepView.Asked> shownQuestions = List.of();
  private Optional<StepView.Trouble> shownTrouble = Optional.empty();

  @FXML private Label banner;
  @FXML private Label crumb;
  @FXML private Label title;
  @FXML private VBox notices;
  @FXML private VBox gate;
  @FXML private VBox cautions;
  @FXML private VBox instruction;
  @FXML private VBox calculator;
  @FXML private VBox questions;
  @FXML private VBox readingTable;
  @FXML private Heads readingHeads;
  @FXML private VBox readings;
  @FXML private VBox bench;
  @FXML private VBox entries;
  @FXML private VBox trouble;

  public StepScreen(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    photo = new PhotoQuestion(desk, instrument);
    printing = new StepPrinting(desk, instrument);
    this.instrument = instrument;
    model = new StepModel(desk, instrument, () -> photo.ask(this.currentStep()));
    path = new PathView(desk.words(), model::open);
    sheet = FxScreen.load(this, desk.words(), VBox.class);
    aside = new StepAside(desk, instrument, asideActs());
    rows = new StepRows(model, desk.words(), readings, line -> aside.showProbes(Optional.of(line)));
    sheet.setOnDragOver(PhotoQuestion::over);
    sheet.setOnDragDropped(event -> photo.drop(model.stepId(), event));
    aside.node().setOnDragOver(PhotoQuestion::over);
    aside.node().setOnDragDropped(event -> photo.drop(model.stepId(), event));
    model.view().addListener((property, was, now) -> show(now));
    model.stages().addListener((property, was, now) -> path.show(now));
    model.order().addListener((property, was, now) -> path.showOrder(now));
    model.focusWanted().addListener((property, was, now) -> rows.focus(now));
    model.benchLines().addListener((property, was, now) -> showBench());
    // the path in one line names stage and number itself
    path.line()
        .parentProperty()
        .addListener((property, was, now) -> Boxes.present(crumb, now == null));
    path.show(model.stages().get());
    path.showOrder(model.order().get());
    show(model.view().get());
  }

  /** Shows a step, as the path does. */
  public void openStep(String id) {
    model.open(id);
  }

  /** Id of the step on the sheet. */
  public String stepId() {
    return model.stepId();
  }

  private String currentStep() {
    return model.stepId();
  }

  @Override
  public Node sheet() {
    return sheet;
  }

  @Override
  public Optional<Node> path() {
    return Optional.of(path.path());
  }

  @Override
  public Optional<Node> pathLine() {
    return Optional.of(path.line());
  }

  @Override
  public List<Node> margin() {
    return List.of(aside.node());
  }

  @Override
  public ObservableValue<Next> next() {
    return model.next();
  }

  @Override
  public Optional<Node> firstFocus() {
    return nextFocus().or(() -> readingTable.isVisible() ? rows.first() : Optional.empty());
  }

  @Override
  public void previousStep() {
    model.move(-1);
  }

  @Override
  public void nextStep() {
    model.move(1);
  }

  @Override
  public void correct() {
    rows.correctFocused();
  }

  private StepAside.Acts asideActs() {
    return new StepAside.Acts(
        () -> photo.ask(model.stepId()),
        this::print,
        () ->
            instrument
                .checklist()
                .stageOf(model.stepId())
                .ifPresent(stage -> printing.print(new Wanted(Extent.STAGE, stage.id()), sheet)),
        model::chooseMeter);
  }

  @Override
  public void print() {
    printing.print(new Wanted(Extent.STEP, model.stepId()), sheet);
  }

  @Override
  public boolean paste(Clipboard clipboard) {
    return photo.paste(model.stepId(), clipboard);
  }

  @Override
  public Optional<Unsaved> unsaved() {
    leaveEntries();
    return model.entries().unsaved();
  }

  @Override
  public void left() {
    leaveEntries();
    model.left();
  }

  private void show(StepView view) {
    present(banner, view.heading().banner());
    crumb.setText(view.heading().crumb());
    title.setText(view.heading().title());
    boolean moved = !shownStep.equals(model.stepId());
    notices.getChildren().setAll(view.heading().notices().stream().map(this::notice).toList());
    showGate(view);
    showCautions(view);
    boolean covered = view.instruction().covered();
    boolean opened = !moved && shownCovered && !covered;
    if (moved || covered != shownCovered) {
      shownCovered = covered;
      aside.showProbes(
          covered
              ? Optional.empty()
              : view.readings().stream().filter(r -> r.probes().isPresent()).findFirst());
    }
    showInstruction(view.instruction());
    showQuestions(covered ? List.of() : view.questions());
    showCalculator(moved, covered);
    showReadings(view, covered);
    showBench();
    showEntries(moved, covered);
    showTrouble(view.outcome().trouble().filter(t -> !covered), moved);
    for (VBox part : List.of(notices, cautions, instruction, questions)) {
      present(part, !part.getChildren().isEmpty());
    }
    aside.show(view.aside());
    if (moved || opened) {
      // After the layout, when the new rows are in the scene.
      Platform.runLater(() -> begin(opened ? instruction : sheet));
    }
  }

  /** The focus goes to what is to be typed; one begins to read at the top, or at what is wrong. */
  private void begin(Node top) {
    firstFocus().ifPresent(Node::requestFocus);
    if (isReadFirst()) {
      Focus.toTop(top);
    } else if (shownTrouble.isPresent()) {
      Focus.toTop(readingTable);
    }
  }

  @Override
  public boolean isReadFirst() {
    return !shownCovered && shownTrouble.isEmpty();
  }

  /** They stay while nothing about them changes: one of them has the focus. */
  private void showCautions(StepView view) {
    if (!view.cautions().equals(shownCautions)) {
      shownCautions = view.cautions();
      cautions
          .getChildren()
          .setAll(
              oneAtATime(view.cautions()).stream()
                  .map(c -> new CautionCard(c, desk.words(), () -> model.acknowledge(c.id())))
                  .toList());
      long open = view.cautions().stream().filter(CautionCard.Content::isOpen).count();
      if (open > 1) {
        cautions.getChildren().add(Words.label(desk.text("window.step.more-cautions", open - 1)));
      }
    }
  }

  /** Those that were read, and the first that was not. */
  private static List<CautionCard.Content> oneAtATime(List<CautionCard.Content> all) {
    Optional<CautionCard.Content> first =
        all.stream().filter(CautionCard.Content::isOpen).findFirst();
    return all.stream().filter(c -> !c.isOpen() || first.filter(c::equals).isPresent()).toList();
  }

  private void showQuestions(List<StepView.Asked> asked) {
    if (!asked.equals(shownQuestions)) {
      shownQuestions = asked;
      questions.getChildren().setAll(asked.stream().map(q -> new QuestionCard(q, model)).toList());
    }
  }

  /** The wash stays while nothing about it changes: a reason may be half typed in it. */
  private void showTrouble(Optional<StepView.Trouble> now, boolean moved) {
    if (moved || !now.equals(shownTrouble)) {
      shownTrouble = now;
      Optional<TroubleWash.Draft> draft =
          trouble.getChildren().stream()
              .flatMap(wash -> ((TroubleWash) wash).draft().stream())
              .findFirst()
              .filter(d -> !moved);
      trouble
          .getChildren()
          .setAll(now.stream().map(t -> new TroubleWash(t, model, desk.words(), draft)).toList());
    }
    present(trouble, now.isPresent());
  }

  private Node notice(String text) {
    return Words.label(text, "notice");
  }

  private void showGate(StepView view) {
    gate.getChildren().clear();
    if (!view.outcome().missing().isEmpty()) {
      gate.getChildren()
          .add(new GateList(desk.text("window.step.first"), view.outcome().missing(), model::open));
    }
    present(gate, !gate.getChildren().isEmpty());
  }

  private void showInstruction(StepView.Instruction shown) {
    instruction.getChildren().clear();
    if (shown.covered()) {
      instruction.getChildren().add(Words.label(coverWords(shown.cover()), "soft", "covered"));
      return;
    }
    shown.how().forEach(line -> instruction.getChildren().add(Words.label(line, "tell")));
    if (!shown.kit().isEmpty()) {
      instruction.getChildren().add(Words.label(shown.kit(), "soft"));
    }
  }

  private String coverWords(StepView.Cover cover) {
    return desk.text(
        cover == StepView.Cover.GATE ? "window.step.covered-gate" : "window.step.covered");
  }

  /** Made once for a step, so that what is typed stays. */
  private void showCalculator(boolean moved, boolean covered) {
    if (moved) {
      calculator
          .getChildren()
          .setAll(
              model
                  .bathDesign()
                  .map(design -> new PlatingView(new PlatingModel(desk.words(), design), desk))
                  .stream()
                  .toList());
    }
    present(calculator, !covered && !calculator.getChildren().isEmpty());
  }

  private void showReadings(StepView view, boolean covered) {
    if (!shownStep.equals(model.stepId())) {
      shownStep = model.stepId();
      rows.begin(view, readingHeads);
    }
    rows.show(view);
    present(readingTable, !covered && !view.readings().isEmpty());
  }

  /** Made once for a step, so that what is typed stays. */
  private void showEntries(boolean moved, boolean covered) {
    if (moved) {
      leaveEntries();
      entries.getChildren().setAll(new EntriesView(model.step(), model, desk.words()));
    } else {
      entries.getChildren().forEach(view -> ((EntriesView) view).refresh());
    }
    boolean asks = entries.getChildren().stream().anyMatch(view -> ((EntriesView) view).asks());
    present(entries, asks && !covered);
  }

  /** What is typed beside the readings goes to the journal, as a reading does. */
  private void leaveEntries() {
    entries.getChildren().forEach(view -> ((EntriesView) view).leave());
  }

  private void showBench() {
    boolean takes = model.takesRecording() && !model.view().get().instruction().covered();
    bench
        .getChildren()
        .setAll(takes ? List.of(new BenchCard(model.benchLines().get(), model, desk)) : List.of());
    present(bench, takes);
  }

  private static void present(Label label, String text) {
    label.setText(text);
    present(label, !text.isEmpty());
  }

  private static void present(Region node, boolean visible) {
    Boxes.present(node, visible);
  }
}
