package faintwind.ui.formula;

import faintwind.calibration.Cancelled;
import faintwind.guide.InForceGate.Answer;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.ui.frame.DataModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import faintwind.ui.work.Running;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The fit of the formula to the runs on record: made in the background, looked at, put in force.
 */
public final class FormulaModel extends DataModel<FormulaModel.View> {
  private final Background background;
  private final LeaveOutModel leaveOut;
  private FormulaWays ways;
  private Optional<Path> table = Optional.empty();
  private Optional<Running> fitting = Optional.empty();
  private Optional<Running> drawing = Optional.empty();
  private boolean fittedHere;
  private boolean inForce;
  private String said = "";
  private MeasuredWhen measured = MeasuredWhen.NOT_SAID;
  private final ReadOnlyObjectWrapper<Optional<MeasuredKnown>> known =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /** How far the fit is. */
  public enum Stage {
    /** There are no runs. */
    NOTHING,
    READY,
    FITTING,
    FITTED,
    REFUSED
  }

  /**
   * What there is to show.
   *
   * @param stage how far the fit is
   * @param made the fit and its file; empty before
   * @param drawing whether the fitted recordings are still being drawn again
   * @param problems sentences with their place
   * @param gate whether the fit may be put in force, and what is open in the build; empty where it
   *     is in force, is practice, or there is none
   */
  public record View(
      Stage stage,
      Optional<Kept> made,
      boolean drawing,
      List<String> problems,
      Optional<Answer> gate) {
    static final View NOTHING =
        new View(Stage.NOTHING, Optional.empty(), false, List.of(), Optional.empty());

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** A model without runs. */
  public FormulaModel(Messages words, Background background, FormulaWays ways) {
    super(words, View.NOTHING);
    this.background = background;
    this.ways = ways;
    leaveOut = new LeaveOutModel(words);
    say();
  }

  /** What it asks of the world. */
  FormulaWays ways() {
    return ways;
  }

  /** The fit while it runs. */
  Optional<Running> work() {
    return fitting;
  }

  /**
   * Whether it should be shown again rather than a fresh one: its fit of these runs is going on, or
   * came to an end in this window.
   */
  boolean holds(Optional<Path> runsTable) {
    return fitting.isPresent() || (fittedHere && table.equals(runsTable));
  }

  /** Goes on for an instrument that was opened again. */
  void goOn(FormulaWays fresh) {
    ways = fresh;
  }

  /** The screen was left: nobody waits for the drawing; a fit goes on. */
  void left() {
    drawing.ifPresent(Running::cancel);
  }

  /** Begins with the runs on record and, where one is in force, its calibration. */
  public void begin(Optional<Path> runsTable) {
    table = runsTable;
    background.entry(
        watch -> ways.read(),
        read -> {
          if (view().get().stage() == Stage.NOTHING || view().get().stage() == Stage.READY) {
            read.ifPresent(this::readAgain);
          }
        },
        this::broke);
    set(runsTable.isPresent() ? Stage.READY : Stage.NOTHING, Optional.empty(), List.of());
    runsTable.ifPresent(this::know);
  }

  private void know(Path runs) {
    background.runQuietly(
        watch -> ways.known(runs),
        found -> known.set(found.fold((v, notes) -> Optional.of(v), p -> Optional.empty())),
        broke -> {});
  }

  /** The runs table that is fitted; empty where there is none. */
  Optional<Path> table() {
    return table;
  }

  /** Another runs table counts from now on: it is fitted at once. */
  private void fitInstead(Path fresh) {
    table = Optional.of(fresh);
    know(fresh);
    fit();
  }

  /** Leaves something out, or takes it back; once that is on disk, the runs are fitted again. */
  void leaveOut(LeaveOut.Choice choice) {
    Optional<Kept> was = view().get().made();
    table.ifPresent(
        runs ->
            ways.leaveOut(runs, choice, answer -> leaveOut.told(answer, was, this::fitInstead)));
  }

  /** What came of it. */
  LeaveOutModel leaveOut() {
    return leaveOut;
  }

  /** What is known of the measurement of the runs; empty until they were looked at. */
  ReadOnlyObjectProperty<Optional<MeasuredKnown>> known() {
    return known.getReadOnlyProperty();
  }

  /** What a person says of the measurement of the runs, for the next fit. */
  void measured(MeasuredWhen byPerson) {
    measured = byPerson;
  }

  private void readAgain(Checked<Kept> read) {
    read.fold(
        (made, notes) -> {
          inForce = ways.isInForce(made.file());
          set(Stage.FITTED, Optional.of(made), List.of());
          if (made.formula().look().isOk()) {
            drawAgain(made);
          }
          return true;
        },
        problems -> false);
  }

  private void drawAgain(Kept made) {
    drawing =
        Optional.of(
            background.runQuietly(
                watch -> unlessStopped(() -> ways.drawnAgain(made, watch)),
                drawn -> drawn(made, drawn),
                broke -> {
                  drawing = Optional.empty();
                  broke(broke);
                }));
    set(Stage.FITTED, Optional.of(made), List.of());
  }

  private void drawn(Kept made, Optional<Kept> drawn) {
    drawing = Optional.empty();
    if (view().get().made().filter(shown -> shown.file().equals(made.file())).isPresent()) {
      set(view().get().stage(), Optional.of(drawn.orElse(made)), view().get().problems());
    }
  }

  /** Fits in the background; the Next line shows how far it is and can stop it. */
  public void fit() {
    if (table.isEmpty() || view().get().stage() == Stage.FITTING) {
      return;
    }
    Path runs = table.get();
    MeasuredWhen byPerson = measured;
    said = "";
    drawing.ifPresent(Running::cancel);
    fitting =
        Optional.of(
            background.runBeside(
                watch -> unlessStopped(() -> ways.fit(runs, byPerson, watch)),
                outcome -> {
                  fitting = Optional.empty();
                  fitted(outcome);
                },
                broke -> {
                  fitting = Optional.empty();
                  broke(broke);
                }));
    set(Stage.FITTING, view().get().made(), List.of());
  }

  private interface Stoppable<T> {
    T run() throws IOException;
  }

  /** Empty where the person stopped it. */
  private static <T> Optional<T> unlessStopped(Stoppable<T> work) throws IOException {
    try {
      return Optional.of(work.run());
    } catch (Cancelled stopped) {
      return Optional.empty();
    }
  }

  private void fitted(Optional<Checked<Kept>> outcome) {
    if (outcome.isEmpty()) {
      said = text("formula.next.stopped");
      boolean before = view().get().made().isPresent();
      set(before ? Stage.FITTED : Stage.READY, view().get().made(), List.of());
      return;
    }
    fittedHere = true;
    outcome
        .get()
        .fold(
            (made, notes) -> {
              inForce = false;
              ways.made(made);
              set(Stage.FITTED, Optional.of(made), lines(made.formula().shortfalls()));
              return true;
            },
            problems -> {
              set(Stage.REFUSED, Optional.empty(), lines(problems));
              return false;
            });
  }

  private void broke(IOException broke) {
    set(
        view().get().made().isPresent() ? Stage.FITTED : Stage.REFUSED,
        view().get().made(),
        List.of(DiskWords.say(broke, words())));
  }

  private void set(Stage stage, Optional<Kept> made, List<String> problems) {
    Optional<Answer> gate =
        made.filter(kept -> stage == Stage.FITTED && !inForce)
            .filter(kept -> !kept.formula().calibration().rehearsal())
            .map(kept -> ways.gate(kept));
    put(new View(stage, made, drawing.isPresent(), problems, gate));
    say();
  }

  /** What is wrong with a reason, in sentences; empty where it may be given. */
  List<String> whyNotExplained(String reason) {
    return lines(ways.whyNotExplained(reason));
  }

  /** Explains why the fit counts though it does not meet the build, and puts it in force. */
  void explain(String reason) {
    view()
        .get()
        .made()
        .filter(made -> ways.whyNotExplained(reason).isEmpty())
        .ifPresent(
            made -> {
              ways.forceExplained(made.file(), reason);
              nowInForce(made);
            });
  }

  private void putInForce(Kept made) {
    ways.putInForce(made.file());
    nowInForce(made);
  }

  private void nowInForce(Kept made) {
    said = "";
    inForce = true;
    set(Stage.FITTED, Optional.of(made), view().get().problems());
  }

  private void writeBuildLog() {
    background.run(
        watch -> ways.writeBuildLog(),
        written -> {
          said =
              written.fold(
                  (file, notes) -> text("formula.next.reported", file),
                  problems -> String.join(" ", lines(problems)));
          say();
        },
        this::broke);
  }

  private void say() {
    Act fit = new Act("formula-fit", text("formula.next.fit.act"), this::fit);
    say(
        switch (view().get().stage()) {
          case NOTHING ->
              Next.say(
                  Mark.READY,
                  text("formula.next.runs"),
                  new Act("formula-runs", text("formula.next.runs.act"), ways::toTurntable));
          case READY ->
              Next.say(Mark.READY, text("formula.next.fit"), fit)
                  .withDetail(said.isEmpty() ? text("formula.next.fit-detail") : said);
          case FITTING -> Next.say(Mark.DOING, text("formula.next.fitting"));
          case REFUSED ->
              Next.say(Mark.BLOCKED, text("formula.next.refused"), fit)
                  .withDetail(text("formula.next.refused-detail"));
          case FITTED -> sayFitted(view().get().made().orElseThrow());
        });
  }

  private Next sayFitted(Kept made) {
    Act again = new Act("formula-again", text("formula.next.again.act"), this::fit);
    if (inForce && known.get().filter(runs -> !runs.isOf(made)).isPresent()) {
      return Next.say(Mark.READY, text("formula.next.new-runs"), again)
          .withDetail(text("formula.next.fit-detail"));
    }
    if (inForce) {
      Act log = new Act("formula-build-log", text("formula.next.report.act"), this::writeBuildLog);
      Act field = new Act("formula-field", text("formula.next.field.act"), ways::toField);
      boolean late = ways.isOverdue();
      String sentence = text(late ? "formula.next.in-force-late" : "formula.next.in-force");
      Next done =
          Next.say(late ? Mark.ATTENTION : Mark.DONE, sentence, field)
              .withDetail(
                  said.isEmpty()
                      ? text("formula.next.in-force-detail", made.file(), ways.due().orElse(""))
                          .strip()
                      : said)
              .withOther(log);
      return table.isPresent() ? done.withOther(again) : done;
    }
    if (made.formula().calibration().rehearsal()) {
      Act log = new Act("formula-practice", text("formula.next.report.act"), this::writeBuildLog);
      return Next.say(Mark.REHEARSAL, text("formula.next.practice"), log)
          .withDetail(said.isEmpty() ? text("formula.next.practice-detail") : said)
          .withOther(again);
    }
    if (view().get().gate().filter(gate -> !gate.opens()).isPresent()) {
      return Next.say(Mark.ATTENTION, text("formula.next.build-off"))
          .withDetail(text("formula.next.build-off-detail"))
          .withOther(again);
    }
    Act force = new Act("formula-force", text("formula.next.force.act"), () -> putInForce(made));
    Mark mark = made.formula().shortfalls().isEmpty() ? Mark.READY : Mark.ATTENTION;
    return Next.say(mark, text("formula.next.force"), force)
        .withDetail(said.isEmpty() ? text("formula.next.force-detail", made.file()) : said)
        .withOther(again);
  }
}
