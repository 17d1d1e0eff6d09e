package faintwind.ui.make;

import faintwind.guide.Gate;
import faintwind.guide.Pressing;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.guide.Waivers;
import faintwind.guide.checklist.Card;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.job.record.LookAtBench;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.record.Standing;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ChangeListener;

/** One step on the sheet: what it shows now, and what a person can enter. */
public final class StepModel implements StepNext.Acts {
  private static final Set<StepState> WORKABLE =
      Set.of(StepState.READY, StepState.DOING, StepState.NEEDS_ATTENTION);

  private final Messages words;
  private final OpenInstrument instrument;
  private final EntriesModel entries;
  private final StepViews views;
  private final StepNext nexts;
  private final PathModel path;
  private final ReadOnlyObjectWrapper<StepView> view;
  private final ReadOnlyObjectWrapper<Next> next;
  private final ReadOnlyObjectWrapper<List<PathModel.StageLine>> stages;
  private final ReadOnlyObjectWrapper<List<PathModel.OrderLine>> order;
  private final Background background;
  private final ReadOnlyObjectWrapper<List<String>> benchLines =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<String> focusWanted = new ReadOnlyObjectWrapper<>("");
  private final ChangeListener<Standpoint> changed =
      (property, was, now) -> {
        refresh();
        goOnWhereFinished();
      };
  private Step step;
  private final Runnable addPhoto;
  private String finishing = "";

  /**
   * A model on an open instrument; it begins at the step where the journal left off.
   *
   * @param addPhoto asks for a photo file and keeps it
   */
  public StepModel(Desk desk, OpenInstrument instrument, Runnable addPhoto) {
    words = desk.words();
    background = desk.background();
    this.instrument = instrument;
    entries = new EntriesModel(desk, instrument);
    views = new StepViews(words, instrument.checklist(), () -> instrument.who().get());
    this.addPhoto = addPhoto;
    nexts = new StepNext(words, this, addPhoto, desk.go());
    path = new PathModel(words);
    step = start();
    view = new ReadOnlyObjectWrapper<>(views.of(step, now().situation(), now().progress()));
    next = new ReadOnlyObjectWrapper<>(nexts.of(step, now(), view.get()));
    stages = new ReadOnlyObjectWrapper<>(stageLines());
    order = new ReadOnlyObjectWrapper<>(path.order(instrument.checklist(), now().progress()));
    instrument.now().addListener(changed);
  }

  public ReadOnlyObjectProperty<StepView> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** The path beside the sheet. */
  public ReadOnlyObjectProperty<List<PathModel.StageLine>> stages() {
    return stages.getReadOnlyProperty();
  }

  /** What can be done now and what waits for which clock. */
  public ReadOnlyObjectProperty<List<PathModel.OrderLine>> order() {
    return order.getReadOnlyProperty();
  }

  /** Id of the reading that should get the focus; empty where none. */
  public ReadOnlyObjectProperty<String> focusWanted() {
    return focusWanted.getReadOnlyProperty();
  }

  public String stepId() {
    return step.id();
  }

  /** The journal remembers that it was opened. */
  @Override
  public void open(String id) {
    instrument
        .checklist()
        .step(id)
        .ifPresent(
            wanted -> {
              step = wanted;
              benchLines.set(List.of());
              instrument.enter(enter -> enter.open(id));
              refresh();
            });
  }

  /** The step before or after, across stages; at the ends nothing happens. */
  public void move(int by) {
    List<Step> all = instrument.checklist().steps();
    int to = all.indexOf(step) + by;
    if (to >= 0 && to < all.size()) {
      open(all.get(to).id());
    }
  }

  @Override
  public Optional<StepProgress> following() {
    return after().stream()
        .filter(s -> WORKABLE.contains(s.state()) || Pressing.stopsItself(s))
        .findFirst()
        .or(() -> after().stream().filter(s -> !s.state().settled()).findFirst())
        .or(() -> now().progress().next().filter(s -> !s.step().equals(step)));
  }

  @Override
  public Optional<StepProgress> workable() {
    return after().stream().filter(s -> WORKABLE.contains(s.state())).findFirst();
  }

  private List<StepProgress> after() {
    List<StepProgress> all = now().progress().steps();
    return all.subList(instrument.checklist().steps().indexOf(step) + 1, all.size());
  }

  /** The design that the plating calculator begins with; empty where the step shows none. */
  Optional<Design> bathDesign() {
    return step.text()
        .card()
        .filter(card -> card == Card.PLATING_BATH)
        .flatMap(card -> now().situation().sheet())
        .flatMap(DesignSheet::design);
  }

  /** Keeps a reading, where it differs from the one that is kept. */
  public void enterReading(String reading, String typed) {
    String stepId = step.id();
    if (!typed.equals(keptReading(reading).map(line -> line.event().typed()).orElse(""))) {
      instrument.enter(enter -> enter.reading(stepId, reading, typed));
    }
  }

  /**
   * Strikes the reading that counts and puts another in its place, or none where it is empty.
   *
   * @param why the reason
   */
  public void correctReading(String reading, String typed, String why) {
    keptReading(reading)
        .ifPresent(
            line ->
                instrument.enter(
                    enter ->
                        typed.isEmpty()
                            ? enter.correct(line.entry(), why, Optional.empty())
                            : enter.correctReading(line.entry(), typed, why)));
  }

  private Optional<Standing<ReadingEntered>> keptReading(String reading) {
    return instrument.state().reading(step.id(), reading);
  }

  /** Answers a question; another answer than before strikes the first one. */
  public void answer(String question, String choice) {
    String stepId = step.id();
    Optional<Standing<QuestionAnswered>> before = instrument.state().answer(stepId, question);
    if (before.isEmpty()) {
      instrument.enter(enter -> enter.answer(stepId, question, choice));
    } else if (!before.get().event().choice().equals(choice)) {
      Optional<Event> other = Optional.of(new QuestionAnswered(question, choice));
      String why = words.text("window.step.answer-changed");
      instrument.enter(enter -> enter.correct(before.get().entry(), why, other));
    }
  }

  /** Keeps that a caution was read. */
  public void acknowledge(String caution) {
    String stepId = step.id();
    instrument.enter(enter -> enter.acknowledge(stepId, caution));
  }

  @Override
  public void startClock() {
    entries.startClock(step);
  }

  /** Whether no number is too large to be good in a reading of the step. */
  boolean isOpenAbove(String reading) {
    Map<String, Double> values = now().situation().values(instrument.checklist());
    return step.reading(reading).filter(r -> r.isOpenAbove(values)).isPresent();
  }

  /** What may be written down beside the readings. */
  EntriesModel entries() {
    return entries;
  }

  /** The step on the sheet. */
  Step step() {
    return step;
  }

  /** Whether the step is not finished for this reason, by its id. */
  boolean isMissing(String reason) {
    return now().progress().step(step.id()).stream()
        .flatMap(where -> where.reasons().stream())
        .anyMatch(problem -> problem.id().equals(reason));
  }

  /**
   * Goes on without the photo, in the name of the person at the window.
   *
   * @return why it cannot be put off; empty where it is
   */
  List<String> putOffPhoto(String reason) {
    String name = instrument.who().get();
    List<String> why = whyNotWaived(EntriesModel.PHOTO, name, reason);
    waive(EntriesModel.PHOTO, name, reason);
    return why;
  }

  /** Asks for a photo file and keeps it. */
  void addPhoto() {
    addPhoto.run();
  }

  /** Uses another class of meter from now on. */
  public void chooseMeter(String id) {
    instrument.enter(enter -> enter.meter(id));
  }

  /** Whether a recording can give a reading of this step. */
  boolean takesRecording() {
    return recorded().isPresent();
  }

  private Optional<Reading> recorded() {
    return step.asks().readings().stream().filter(r -> r.recorded().isPresent()).findFirst();
  }

  /** What the last recording of this step showed, in sentences. */
  public ReadOnlyObjectProperty<List<String>> benchLines() {
    return benchLines.getReadOnlyProperty();
  }

  /** Takes this step's reading from a recording and keeps what it showed with the step. */
  public void lookAt(Path file) {
    String stepId = step.id();
    recorded().ifPresent(reading -> lookAt(file, stepId, reading));
  }

  private void lookAt(Path file, String stepId, Reading reading) {
    LookAtBench bench = new LookAtBench(now().situation().sheetValues());
    String name = String.valueOf(file.getFileName());
    background.run(
        watch -> bench.look(file, reading),
        found ->
            found.fold(
                (looked, notes) -> {
                  List<String> lines = new BenchWords(words).of(looked, reading.unit(), name);
                  benchLines.set(lines);
                  String note = String.join(" ", lines);
                  instrument.enter(e -> e.reading(stepId, reading.id(), looked.typed()));
                  instrument.enter(e -> e.plain(Optional.of(stepId), new Event.NoteWritten(note)));
                  return true;
                },
                problems -> {
                  benchLines.set(problems.stream().map(words::sentence).toList());
                  return false;
                }),
        world -> benchLines.set(List.of(String.valueOf(world.getMessage()))));
  }

  @Override
  public void confirmTime() {
    String stepId = step.id();
    instrument.enter(enter -> enter.confirmTime(stepId));
  }

  /** Whether the step may be called finished. */
  public boolean canFinish() {
    return Gate.toFinish(instrument.checklist(), step, now().situation()).open();
  }

  /** The next step shows when it is on disk. */
  @Override
  public void finish() {
    if (!canFinish()) {
      return;
    }
    String stepId = step.id();
    finishing = stepId;
    instrument.enter(enter -> enter.finish(stepId));
  }

  /** Goes on once the step is finished on disk: only then is it known what that made ready. */
  private void goOnWhereFinished() {
    if (finishing.equals(step.id()) && now().situation().state().finished(finishing).isPresent()) {
      finishing = "";
      following().ifPresent(s -> open(s.step().id()));
    }
  }

  /** Why a waiver cannot be written, in sentences; empty where it can. */
  public List<String> whyNotWaived(String reading, String name, String reason) {
    Waived waiver = new Waived(reading, reason.trim());
    return Waivers.refusals(instrument.checklist(), step, waiver, name.trim(), now().situation())
        .stream()
        .filter(problem -> !name.isBlank() || !problem.id().equals("waiver.not-the-teacher"))
        .map(this::why)
        .toList();
  }

  /** Of what is not typed yet, what to type alone: nothing is wrong with it. */
  private String why(Problem problem) {
    boolean empty = problem.id().startsWith("waiver.no-") && problem.found().isEmpty();
    return empty ? words.text(problem.id() + ".todo") : words.sentence(problem);
  }

  /** Whether a waiver can be written. */
  public boolean canWaive(String reading, String name, String reason) {
    return whyNotWaived(reading, name, reason).isEmpty();
  }

  /** Goes on without a reading, by name and with a reason. */
  public void waive(String reading, String name, String reason) {
    if (canWaive(reading, name, reason)) {
      instrument.who().set(name.trim());
      String stepId = step.id();
      instrument.enter(enter -> enter.waive(stepId, reading, reason.trim()));
    }
  }

  @Override
  public void wantFocus(String reading) {
    focusWanted.set("");
    focusWanted.set(reading);
  }

  /** Stops following the instrument. */
  public void left() {
    instrument.now().removeListener(changed);
  }

  private Standpoint now() {
    return instrument.now().get();
  }

  private Step start() {
    return instrument
        .state()
        .last(StepOpened.class)
        .flatMap(Standing::step)
        .flatMap(instrument.checklist()::step)
        .or(() -> now().progress().next().map(StepProgress::step))
        .orElseGet(() -> instrument.checklist().steps().get(0));
  }

  private List<PathModel.StageLine> stageLines() {
    return path.lines(instrument.checklist(), now().progress(), step.id());
  }

  private void refresh() {
    view.set(views.of(step, now().situation(), now().progress()));
    next.set(nexts.of(step, now(), view.get()));
    stages.set(stageLines());
    order.set(path.order(instrument.checklist(), now().progress()));
  }
}
