package faintwind.ui;

import faintwind.calibration.fit.Optimiser;
import faintwind.job.JobWatch;
import faintwind.job.KeepFormula.Kept;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The fit of the formula to the runs on record: made in the background, looked at, put in force.
 */
public final class FormulaModel {
  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private final ReadOnlyObjectWrapper<Next> next;
  private Optional<Path> table = Optional.empty();
  private boolean inForce;
  private String said = "";

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
   * @param problems sentences with their place
   */
  public record View(Stage stage, Optional<Kept> made, List<String> problems) {
    static final View NOTHING = new View(Stage.NOTHING, Optional.empty(), List.of());

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** What the model asks of the world. */
  public interface Ways {

    /** Fits the runs of a table and keeps the calibration file; off the JavaFX thread. */
    Checked<Kept> fit(Path table, JobWatch watch) throws IOException;

    /** Reads the calibration in force again; empty where there is none. */
    Optional<Checked<Kept>> read() throws IOException;

    /** Notes in the journal that a calibration was made. */
    void made(Kept kept);

    /** Puts a calibration file in force. */
    void putInForce(String file);

    /** Writes the build log into the instrument's folder; off the JavaFX thread. */
    Checked<String> writeBuildLog() throws IOException;

    /** Goes to the turntable. */
    void toTurntable();
  }

  /** A model without runs. */
  public FormulaModel(Messages words, Background background, Ways ways) {
    this.words = words;
    this.background = background;
    this.ways = ways;
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, ""));
    say();
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** Begins with the runs on record and, where one is in force, its calibration. */
  public void begin(Optional<Path> runsTable) {
    table = runsTable;
    background.entry(
        watch -> ways.read(),
        read -> {
          if (view.get().stage() == Stage.NOTHING || view.get().stage() == Stage.READY) {
            read.ifPresent(this::readAgain);
          }
        },
        this::broke);
    set(runsTable.isPresent() ? Stage.READY : Stage.NOTHING, Optional.empty(), List.of());
  }

  private void readAgain(Checked<Kept> read) {
    read.fold(
        (made, notes) -> {
          inForce = true;
          set(Stage.FITTED, Optional.of(made), List.of());
          return true;
        },
        problems -> false);
  }

  /** Fits in the background; the Next line shows how far it is and can stop it. */
  public void fit() {
    if (table.isEmpty() || view.get().stage() == Stage.FITTING) {
      return;
    }
    Path runs = table.get();
    said = "";
    set(Stage.FITTING, view.get().made(), List.of());
    background.run(watch -> fit(runs, watch), this::fitted, this::broke);
  }

  /** Empty where the person stopped it. */
  private Optional<Checked<Kept>> fit(Path runs, JobWatch watch) throws IOException {
    try {
      return Optional.of(ways.fit(runs, watch));
    } catch (Optimiser.Cancelled stopped) {
      return Optional.empty();
    }
  }

  private void fitted(Optional<Checked<Kept>> outcome) {
    if (outcome.isEmpty()) {
      said = words.text("formula.next.stopped");
      boolean before = view.get().made().isPresent();
      set(before ? Stage.FITTED : Stage.READY, view.get().made(), List.of());
      return;
    }
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
        view.get().made().isPresent() ? Stage.FITTED : Stage.REFUSED,
        view.get().made(),
        List.of(DiskWords.say(broke, words)));
  }

  private List<String> lines(List<Problem> problems) {
    return problems.stream().map(words::line).toList();
  }

  private void set(Stage stage, Optional<Kept> made, List<String> problems) {
    view.set(new View(stage, made, problems));
    say();
  }

  private void putInForce(Kept made) {
    said = "";
    ways.putInForce(made.file());
    inForce = true;
    say();
  }

  private void writeBuildLog() {
    background.run(
        watch -> ways.writeBuildLog(),
        written -> {
          said =
              written.fold(
                  (file, notes) -> words.text("formula.next.reported", file),
                  problems -> String.join(" ", lines(problems)));
          say();
        },
        this::broke);
  }

  private void say() {
    Act fit = new Act("formula-fit", words.text("formula.next.fit.act"), this::fit);
    next.set(
        switch (view.get().stage()) {
          case NOTHING ->
              Next.say(
                  Mark.READY,
                  words.text("formula.next.runs"),
                  new Act("formula-runs", words.text("formula.next.runs.act"), ways::toTurntable));
          case READY ->
              Next.say(Mark.READY, words.text("formula.next.fit"), fit)
                  .withDetail(said.isEmpty() ? words.text("formula.next.fit-detail") : said);
          case FITTING -> Next.say(Mark.DOING, words.text("formula.next.fitting"));
          case REFUSED ->
              Next.say(Mark.BLOCKED, words.text("formula.next.refused"), fit)
                  .withDetail(words.text("formula.next.refused-detail"));
          case FITTED -> sayFitted(view.get().made().orElseThrow());
        });
  }

  private Next sayFitted(Kept made) {
    Act again = new Act("formula-again", words.text("formula.next.again.act"), this::fit);
    if (inForce) {
      Act log =
          new Act("formula-build-log", words.text("formula.next.report.act"), this::writeBuildLog);
      Next done =
          Next.say(Mark.DONE, words.text("formula.next.in-force"), log)
              .withDetail(
                  said.isEmpty() ? words.text("formula.next.in-force-detail", made.file()) : said);
      return table.isPresent() ? done.withOther(again) : done;
    }
    Act force =
        new Act("formula-force", words.text("formula.next.force.act"), () -> putInForce(made));
    Mark mark = made.formula().shortfalls().isEmpty() ? Mark.READY : Mark.ATTENTION;
    return Next.say(mark, words.text("formula.next.force"), force)
        .withDetail(said.isEmpty() ? words.text("formula.next.force-detail", made.file()) : said)
        .withOther(again);
  }
}
