package faintwind.ui.home;

import faintwind.guide.Due;
import faintwind.guide.Pressing;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.StepClock;
import faintwind.job.bench.BenchText;
import faintwind.job.bench.ReadBench;
import faintwind.message.DateText;
import faintwind.message.FirstSentences;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.Retired;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.ui.home.HomeView.Board;
import faintwind.ui.home.HomeView.Clock;
import faintwind.ui.home.HomeView.Length;
import faintwind.ui.home.HomeView.Line;
import faintwind.ui.home.HomeView.Said;
import faintwind.ui.home.HomeView.State;
import faintwind.ui.instrument.ClockWords;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.part.Mark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts the instruments of a folder into the words of a {@link HomeView}. */
final class HomeWords {
  private static final int MOST_LETTERS = 90;

  private static final Set<Mark> NEEDS_HANDS = Set.of(Mark.BLOCKED, Mark.ATTENTION);

  private final Messages words;
  private final ClockWords clocks;
  private final BenchText bench;

  HomeWords(Messages words) {
    this.words = words;
    clocks = new ClockWords(words);
    bench = new BenchText(words);
  }

  /** A line an instrument. */
  List<Line> lines(Workspace.Found found) {
    return found.instruments().stream().map(this::line).toList();
  }

  HomeView view(Workspace.Found found, List<Line> all, HomeChoice choice) {
    List<Line> lines = all.stream().filter(line -> !line.board().archived()).toList();
    List<Clock> running =
        found.instruments().stream().flatMap(s -> clocksOf(s.standpoint()).stream()).toList();
    long needing = lines.stream().filter(l -> NEEDS_HANDS.contains(l.state().mark())).count();
    List<String> broken =
        found.broken().stream()
            .map(b -> b.folder().getFileName() + ": " + words.lines(b.problems()))
            .toList();
    return new HomeView(
        words.text("window.home.title", lines.size(), needing), choice.of(all), running, broken);
  }

  /** Folders that were not looked into yet: each can be opened, and no more is known. */
  List<Line> glance(List<Path> folders) {
    State unread = new State(Mark.DOING, words.text("window.home.unread"), "");
    return folders.stream()
        .map(
            folder -> {
              String name = String.valueOf(folder.getFileName());
              return new Line(folder, name, "", List.of(), unread, new Said("", ""), Board.NOTHING);
            })
        .toList();
  }

  private Line line(Workspace.Listed listed) {
    Standpoint standpoint = listed.standpoint();
    Progress progress = standpoint.progress();
    InstrumentState state = standpoint.view().state();
    List<Length> lengths =
        standpoint.view().checklist().stages().stream()
            .map(stage -> new Length(StepMarks.of(stage, progress), stage.title()))
            .toList();
    Optional<StepProgress> pressing = Pressing.of(progress);
    return new Line(
        standpoint.view().path(),
        name(standpoint),
        state.rehearsal() ? words.text("window.home.rehearse-why") : what(listed),
        lengths,
        state.rehearsal() ? rehearsal() : state(standpoint, pressing),
        state.rehearsal()
            ? new Said(words.text("turntable.live.rehearse-title"), "")
            : next(standpoint, pressing),
        board(listed));
  }

  static String name(Standpoint standpoint) {
    return standpoint
        .view()
        .state()
        .name()
        .orElseGet(() -> String.valueOf(standpoint.view().path().getFileName()));
  }

  /** The mark of its row, without its words. */
  static Mark mark(Standpoint standpoint) {
    return mark(standpoint, Pressing.of(standpoint.progress()));
  }

  private static Mark mark(Standpoint standpoint, Optional<StepProgress> pressing) {
    InstrumentState state = standpoint.view().state();
    if (state.rehearsal()) {
      return Mark.REHEARSAL;
    }
    if (state.retired() || ReadBench.isHandedOver(state)) {
      return Mark.DONE;
    }
    if (!standpoint.view().writable()) {
      return Mark.BLOCKED;
    }
    if (!standpoint.view().faults().isEmpty()) {
      return Mark.ATTENTION;
    }
    return pressing
        .map(StepMarks::of)
        .orElseGet(() -> isPastDue(standpoint) ? Mark.ATTENTION : Mark.DONE);
  }

  private static boolean isPastDue(Standpoint standpoint) {
    return due(standpoint).filter(d -> isPast(d, standpoint)).isPresent();
  }

  private Board board(Workspace.Listed listed) {
    Standpoint at = listed.standpoint();
    InstrumentState state = at.view().state();
    List<String> notes = new ArrayList<>();
    ReadBench.jar(at.view(), at.situation(), words).map(bench::jar).ifPresent(notes::add);
    int waivers = state.standing(Waived.class).size();
    if (waivers > 0) {
      notes.add(words.text("bench-list.waivers", waivers));
    }
    String calibration = listed.range().map(bench::brief).orElse("");
    boolean clockRuns = running(at).isPresent();
    return new Board(calibration, listed.range(), notes, state.retired(), clockRuns);
  }

  /** A folder for rehearsals has no instrument whose steps could wait. */
  private State rehearsal() {
    return new State(Mark.REHEARSAL, words.text(Mark.REHEARSAL.key()), "");
  }

  private State state(Standpoint standpoint, Optional<StepProgress> pressing) {
    Mark mark = mark(standpoint, pressing);
    Optional<Standing<Retired>> retired = standpoint.view().state().last(Retired.class);
    if (retired.isPresent()) {
      String why = retired.get().event().why();
      return new State(mark, words.text("window.home.archived"), why);
    }
    Optional<String> given = ReadBench.given(standpoint.view().state(), words);
    if (given.isPresent()) {
      return new State(mark, words.text("bench-list.need.handed-over"), given.get());
    }
    if (!standpoint.view().writable()) {
      return new State(
          mark, words.text("window.home.read-only"), words.lines(standpoint.view().problems()));
    }
    List<Problem> faults = standpoint.view().faults();
    if (!faults.isEmpty()) {
      return new State(mark, words.text(mark.key()), words.lines(faults));
    }
    if (pressing.isEmpty()) {
      return inUse(standpoint, mark);
    }
    StepProgress step = pressing.get();
    String note =
        switch (mark) {
          case WAITING ->
              step.clock()
                  .map(clocks::left)
                  .map(t -> words.text("window.home.to-go", t))
                  .orElse("");
          case BLOCKED, ATTENTION -> firstReason(step);
          case READY, DOING, DONE, CORRECTED, REHEARSAL ->
              standpoint.view().checklist().stageOf(step.step().id()).map(Stage::title).orElse("");
        };
    return new State(mark, words.text(mark.key()), note);
  }

  /** Nothing is left to be built: in use, until the calibration is due again. */
  private State inUse(Standpoint standpoint, Mark mark) {
    Optional<Due> due = due(standpoint);
    boolean past = mark == Mark.ATTENTION;
    return new State(
        mark,
        words.text(past ? "window.home.due-now" : "window.home.in-use"),
        past ? capitalised(words.text(due.orElseThrow().cause().key())) : "");
  }

  /** Its design, and when its calibration is due. */
  private String what(Workspace.Listed listed) {
    String design = listed.what().orElse(words.text("window.home.no-design"));
    return due(listed.standpoint())
        .map(
            due -> {
              boolean past = isPast(due, listed.standpoint());
              String day = DateText.day(words, due.at());
              String key = past ? "window.home.due-since" : "window.home.due";
              return design + ". " + words.text(key, day);
            })
        .orElse(design);
  }

  private static Optional<Due> due(Standpoint standpoint) {
    return Due.ofInForce(standpoint.view().checklist(), standpoint.situation());
  }

  private static boolean isPast(Due due, Standpoint standpoint) {
    return due.isPast(standpoint.situation().now());
  }

  private Said next(Standpoint standpoint, Optional<StepProgress> pressing) {
    if (ReadBench.isHandedOver(standpoint.view().state())) {
      return new Said(words.text("window.home.given"), "");
    }
    if (pressing.isEmpty()) {
      boolean past = isPastDue(standpoint);
      return new Said(words.text(past ? "window.home.calibrate" : "window.home.bring-log"), "");
    }
    StepProgress step = pressing.get();
    String detail =
        switch (StepMarks.of(step)) {
          case READY, DOING -> running(standpoint).orElseGet(() -> firstReason(step));
          case WAITING -> step.step().asks().clock().map(c -> c.label()).orElse("");
          case BLOCKED, ATTENTION, DONE, CORRECTED, REHEARSAL -> "";
        };
    return new Said(step.step().title(), detail);
  }

  /** The clock that runs first to its end, with the time left. */
  private Optional<String> running(Standpoint standpoint) {
    return standpoint.progress().steps().stream()
        .flatMap(step -> step.clock().stream())
        .filter(clock -> clock.stand() == StepClock.Stand.RUNNING)
        .min(Comparator.comparing(StepClock::left_s))
        .map(clock -> words.text("window.home.clock-runs", clocks.left(clock)));
  }

  private String firstReason(StepProgress step) {
    return Stream.concat(step.reasons().stream(), step.doubts().stream())
        .filter(reason -> !reason.id().equals("gate.not-finished"))
        .filter(reason -> !Pressing.stopsItself(step) || Pressing.isStop(reason))
        .findFirst()
        .map(reason -> FirstSentences.of(capitalised(words.sentence(reason)), MOST_LETTERS))
        .orElse("");
  }

  private List<Clock> clocksOf(Standpoint standpoint) {
    String name = standpoint.view().state().name().orElse("");
    return standpoint.progress().steps().stream()
        .filter(s -> s.clock().filter(c -> c.stand() == StepClock.Stand.RUNNING).isPresent())
        .map(
            s -> {
              StepClock clock = s.clock().orElseThrow();
              String label = s.step().asks().clock().map(c -> c.label()).orElse("");
              return new Clock(name + "  " + label, clocks.left(clock), clock.share());
            })
        .toList();
  }

  /** The same words with a capital at their head. */
  private static String capitalised(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
