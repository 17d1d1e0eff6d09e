package faintwind.ui.turntable;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.job.field.ForeignLog;
import faintwind.job.field.ForeignRuns;
import faintwind.job.turntable.ReadRuns;
import faintwind.job.turntable.TypedRuns;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.ui.frame.DataModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.TimeText;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The turntable's recordings: brought in as a runs table or noted by hand, then looked at. */
public final class TurntableModel extends DataModel<TurntableModel.View> {
  private final Background background;
  private final Consumer<Path> take;
  private final TypedRunsModel typed;
  private final ReadOnlyObjectWrapper<Optional<LiveTableModel>> live =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Optional<Next> offered = Optional.empty();
  private Optional<Next> planning = Optional.empty();
  private Optional<Act> planner = Optional.empty();
  private Optional<Path> foreign = Optional.empty();
  private boolean cautionRead;

  /** The runs that count while a table that was brought in after them is refused. */
  private List<Run> earlier = List.of();

  /**
   * What there is to show.
   *
   * @param table the table that was read; empty where nothing was brought in
   * @param runs its runs; empty where it was refused
   * @param problems sentences with their place
   * @param refused whether the problems keep the runs from being used
   */
  public record View(Optional<Path> table, List<Run> runs, List<String> problems, boolean refused) {
    static final View NOTHING = new View(Optional.empty(), List.of(), List.of(), false);

    public View {
      runs = List.copyOf(runs);
      problems = List.copyOf(problems);
    }
  }

  /**
   * One run in the list at the left.
   *
   * @param mark state
   * @param name such as "0.60 m/s" or "Warm-up, still"
   * @param detail direction and duration
   */
  public record RunLine(Mark mark, String name, String detail) {}

  /**
   * A model with nothing brought in.
   *
   * @param take takes the table on to the formula
   */
  public TurntableModel(Messages words, Background background, Consumer<Path> take) {
    this(words, background, take, new TypedRunsModel(words));
  }

  /** The same with runs that were typed before. */
  public TurntableModel(
      Messages words, Background background, Consumer<Path> take, TypedRunsModel typed) {
    super(words, View.NOTHING);
    this.background = background;
    this.take = take;
    this.typed = typed;
    say();
  }

  /** The runs that are typed. */
  public TypedRunsModel typed() {
    return typed;
  }

  public boolean isCautionRead() {
    return cautionRead;
  }

  /** The caution of the spinning arm was read: the rest opens. */
  public void cautionRead() {
    cautionRead = true;
    say();
  }

  /** The session that is turned now, if one is. */
  public ReadOnlyObjectProperty<Optional<LiveTableModel>> live() {
    return live.getReadOnlyProperty();
  }

  /** A session begins, or goes on after another screen was looked at. */
  public void show(LiveTableModel session) {
    live.set(Optional.of(session));
    session.next().addListener((property, was, now) -> say());
    say();
  }

  /** The session is over: its runs are looked at. */
  public void over(Path table) {
    live.set(Optional.empty());
    open(table);
    say();
  }

  /** A session could not be begun. */
  public void notBegun(IOException broke) {
    broke(Path.of(""), broke);
  }

  /** Says what to do while there are no runs, in place of bringing them in. */
  public void offer(Next now) {
    offered = Optional.of(now);
    say();
  }

  /** Where there are no runs the session is planned first. */
  void planWith(Act plan) {
    planner = Optional.of(plan);
    say();
  }

  /** Says what to do while the planner is open; empty once it is not. */
  public void planning(Optional<Next> now) {
    planning = now;
    say();
  }

  /** The spins that are noted belong to this recording. */
  public void recorded(Path file) {
    typed.recording().set(Optional.of(file));
  }

  /** The same for a foreign recording: the run file that comes of it is written beside it. */
  public void recorded(Path log, ImportProfile profile) {
    background.run(
        watch -> ForeignLog.toRunFile(log, profile),
        made -> imported(log, made),
        failure -> broke(log, failure));
  }

  private void imported(Path log, Checked<Path> made) {
    if (made instanceof Checked.Ok<Path> ok) {
      recorded(ok.value());
    } else {
      put(new View(Optional.of(log), List.of(), lines(made.problems()), true));
      say();
    }
  }

  /**
   * Reads a runs table, or takes a recording for the runs that are typed, off the JavaFX thread.
   */
  public void open(Path file) {
    background.run(
        watch -> new Brought(ReadRuns.isRecording(file), ReadRuns.read(file)),
        brought -> {
          if (brought.recording()) {
            recorded(file);
          } else {
            show(file, brought.read());
          }
        },
        broke -> broke(file, broke));
  }

  private record Brought(boolean recording, Checked<RunSet> read) {}

  /** The recording of a foreign logger that was brought in, by itself or by a table. */
  public Optional<Path> foreign() {
    return foreign;
  }

  /** What the lines of that recording mean: run files are made, and what came of them is shown. */
  public void foreignIs(ImportProfile profile) {
    Path log = foreign.orElseThrow();
    Path table = view().get().table().orElse(log);
    if (table.equals(log)) {
      recorded(log, profile);
      return;
    }
    background.run(
        watch -> ForeignRuns.toRunFiles(table, profile),
        made ->
            made.fold(
                (fresh, notes) -> {
                  open(fresh);
                  return true;
                },
                problems -> {
                  show(table, Checked.refused(problems));
                  return false;
                }),
        broke -> broke(table, broke));
  }

  /** Writes the typed runs as a table beside their recording and reads it back. */
  public void openTyped() {
    Checked<TypedRuns.Noted> noted = typed.read();
    noted.fold(
        (value, notes) -> {
          background.run(
              watch -> {
                Path table = TypedRuns.write(value);
                return new Written(table, ReadRuns.read(table));
              },
              written -> {
                typed.markWritten();
                show(written.table(), written.read());
                ask(notes);
              },
              broke -> broke(value.recording(), broke));
          return true;
        },
        problems -> {
          put(new View(Optional.empty(), List.of(), lines(problems), true));
          say();
          return false;
        });
  }

  /** Adds questions about what was typed to what the table itself says. */
  private void ask(List<Problem> notes) {
    View now = view().get();
    List<String> all = new ArrayList<>(lines(notes));
    all.addAll(now.problems());
    put(new View(now.table(), now.runs(), all, now.refused()));
    say();
  }

  private record Written(Path table, Checked<RunSet> read) {}

  private void show(Path table, Checked<RunSet> read) {
    foreign =
        read.problems().stream()
            .filter(problem -> problem.id().equals(ForeignRuns.FOREIGN))
            .findFirst()
            .flatMap(problem -> problem.where().file())
            .map(Path::of);
    earlier = read.fold((set, notes) -> set.runs(), problems -> earlier);
    put(
        read.fold(
            (set, notes) -> new View(Optional.of(table), set.runs(), lines(notes), false),
            problems -> new View(Optional.of(table), List.of(), lines(problems), true)));
    say();
  }

  private void broke(Path file, IOException broke) {
    String text = failed(file, broke);
    put(new View(Optional.of(file), List.of(), List.of(text), true));
    say();
  }

  /** The one sentence at the top. */
  public String title() {
    View now = view().get();
    if (now.refused()) {
      return text("turntable.title.refused", now.problems().size());
    }
    if (now.runs().isEmpty()) {
      return text("turntable.title.nothing");
    }
    long spins = now.runs().stream().filter(r -> r.kind() == RunKind.SPIN).count();
    return text("turntable.title.runs", now.runs().size(), spins);
  }

  /** The runs as lines; where a table was refused, those that were brought in before it. */
  public List<RunLine> lines() {
    View now = view().get();
    return (now.refused() ? earlier : now.runs()).stream().map(this::line).toList();
  }

  /** Says of which runs the lines are, where it is not those that were just brought in. */
  public Optional<String> whose() {
    return view().get().refused() && !earlier.isEmpty()
        ? Optional.of(text("turntable.path.earlier"))
        : Optional.empty();
  }

  private RunLine line(Run run) {
    double length_s = run.recording().signal().last_s() - run.recording().signal().first_s();
    String time = TimeText.of(words(), length_s);
    String name =
        switch (run.kind()) {
          case STILL -> text("turntable.run.still");
          case ZERO -> text("turntable.run.zero");
          case REFERENCE ->
              text("turntable.run.speed", Numerals.places(run.reference_m_s().get().value(), 2));
          case SPIN -> text("turntable.run.speed", Numerals.places(run.arm().get().speed_m_s(), 2));
        };
    String way =
        run.conditions()
            .direction()
            .map(d -> text(d == Direction.CW ? "plot.cw" : "plot.ccw") + ", ")
            .orElse("");
    return new RunLine(Mark.DONE, name, way + time);
  }

  private void say() {
    View now = view().get();
    if (live.get().isPresent()) {
      say(live.get().get().next().get());
    } else if (!cautionRead) {
      say(Next.say(Mark.BLOCKED, text("turntable.next.caution")));
    } else if (planning.isPresent()) {
      say(planning.get());
    } else if (now.refused()) {
      say(
          Next.say(Mark.BLOCKED, text("turntable.next.refused"))
              .withDetail(text("turntable.next.refused-detail")));
    } else if (now.runs().isEmpty() && offered.isPresent()) {
      say(offered.get());
    } else if (now.runs().isEmpty()) {
      say(
          planner
              .map(plan -> Next.say(Mark.READY, text("turntable.next.plan"), plan))
              .orElseGet(() -> Next.say(Mark.READY, text("turntable.next.bring"))));
    } else {
      Act act =
          new Act(
              "turntable-fit", text("turntable.next.fit.act"), () -> now.table().ifPresent(take));
      Mark mark = now.problems().isEmpty() ? Mark.DONE : Mark.ATTENTION;
      say(
          Next.say(mark, text("turntable.next.fit"), act)
              .withDetail(text("turntable.next.fit-detail")));
    }
  }
}
