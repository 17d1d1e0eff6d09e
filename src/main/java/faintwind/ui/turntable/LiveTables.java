package faintwind.ui.turntable;

import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.job.live.LiveInput;
import faintwind.job.live.LiveSession;
import faintwind.job.live.Rehearsal;
import faintwind.job.live.RehearsalHand;
import faintwind.job.live.RehearsalPlan;
import faintwind.job.turntable.JoinedTable;
import faintwind.job.turntable.TurnBeat;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.listen.ListenModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;

/**
 * The sessions that are turned now, by instrument folder. They go on while other screens are looked
 * at. On the JavaFX thread.
 */
public final class LiveTables {
  /** Thirty times as fast: a whole rehearsal in four minutes. */
  private static final double USUAL_PACE = 30;

  private static final String LIVE = "live-";

  private final Desk desk;
  private final Map<Path, LiveTableModel> running = new HashMap<>();
  private final Map<Path, Consumer<Path>> listening = new HashMap<>();
  private final Map<Path, TypedRunsModel> typed = new HashMap<>();
  private final Map<Path, ListenModel> recordings = new HashMap<>();

  public LiveTables(Desk desk) {
    this.desk = desk;
  }

  /** The session of an instrument, if one runs. */
  public Optional<LiveTableModel> of(Path instrument) {
    return Optional.ofNullable(running.get(instrument));
  }

  /** Whether something is turned or recorded now. */
  public boolean isBusy() {
    return !running.isEmpty() || recordings.values().stream().anyMatch(ListenModel::isRecording);
  }

  /** The runs that are typed for an instrument; they stay while other screens are looked at. */
  public TypedRunsModel typed(Path instrument) {
    return typed.computeIfAbsent(instrument, folder -> new TypedRunsModel(desk.words()));
  }

  /** The typed runs are with the instrument: the next session begins with empty rows. */
  public void forgetTyped(Path instrument) {
    typed.computeIfPresent(instrument, (folder, runs) -> runs.isUnsaved() ? runs : null);
  }

  /** What the end of the window would end or lose. */
  public List<Unsaved> unsaved() {
    List<Unsaved> all = new ArrayList<>();
    running
        .keySet()
        .forEach(
            folder ->
                all.add(
                    unsaved("turntable.unsaved-session", folder, "turntable.unsaved-session.end")));
    typed.forEach(
        (folder, runs) -> {
          if (runs.isUnsaved()) {
            all.add(unsaved("turntable.unsaved-typed", folder, "window.unsaved.drop"));
          }
        });
    return all;
  }

  private Unsaved unsaved(String question, Path folder, String drop) {
    return new Unsaved(
        desk.text(question, String.valueOf(folder.getFileName())),
        Optional.empty(),
        desk.text(drop));
  }

  /** The plain recording of an instrument, begun or not. */
  public ListenModel recording(Path instrument) {
    return recordings.computeIfAbsent(
        instrument,
        folder -> new ListenModel(desk.words(), Platform::runLater, folder.resolve("recordings")));
  }

  /** Who takes the runs table of a session that goes on, from now on. */
  public void whenOver(Path instrument, Consumer<Path> over) {
    listening.put(instrument, over);
  }

  /** Begins a rehearsal of a plan with a made-up pair. */
  void rehearse(Path instrument, RehearsalPlan.Own own, int lesson, Answers answers) {
    inFolder(
        instrument,
        folder -> {
          long seed = desk.clock().millis();
          Rehearsal rehearsal = new Rehearsal(own.build(), seed, USUAL_PACE);
          if (own.preparation().plan().steps().get(0).kind() != PlannedStep.Kind.ZERO) {
            rehearsal.blow(0, VirtualStage.Heater.ON); // a lesson begins warm
            rehearsal.settle();
          }
          RehearsalHand hand =
              new RehearsalHand(rehearsal, RehearsalHand.Lead.PERSON, seed, USUAL_PACE);
          Bench bench = new Bench(rehearsal.input(), own.preparation(), Optional.empty(), lesson);
          begin(new Parts(instrument, folder, bench, Optional.of(hand)), answers);
        },
        answers);
  }

  /** Records a source of readings along a plan. */
  void record(Path instrument, Bench bench, Answers answers) {
    inFolder(
        instrument,
        folder -> begin(new Parts(instrument, folder, bench, Optional.empty()), answers),
        answers);
  }

  /**
   * What a session starts from.
   *
   * @param input the readings
   * @param plan what is followed
   * @param meter asks for them where a person types them
   * @param lesson which lesson of the plan, from 1; from the second on, the runs of the session
   *     before stand in front of its own
   */
  record Bench(
      LiveInput input, LiveSession.Preparation plan, Optional<TypedMeter> meter, int lesson) {}

  /**
   * Who is told.
   *
   * @param began takes the session
   * @param over takes its runs table when it is over
   * @param failed takes what the world refused
   */
  public record Answers(
      Consumer<LiveTableModel> began, Consumer<Path> over, Consumer<IOException> failed) {}

  private record Parts(Path instrument, Path folder, Bench bench, Optional<RehearsalHand> hand) {}

  private void begin(Parts parts, Answers answers) {
    Path instrument = parts.instrument();
    Bench bench = parts.bench();
    LiveSession session =
        new LiveSession(
            bench.input(), parts.folder(), bench.plan(), parts.hand(), LiveTables::seconds);
    bench.meter().ifPresent(meter -> meter.follow(session));
    TurnBeat beat = TurnBeat.heard(LiveTables::seconds);
    LiveTableModel model =
        new LiveTableModel(
            desk.words(),
            new LiveTableModel.Bench(session, bench.plan(), parts.hand(), beat, bench.meter()),
            table -> {
              running.remove(instrument);
              over(
                  table,
                  bench.lesson(),
                  listening.getOrDefault(instrument, answers.over()),
                  answers);
            });
    running.put(instrument, model);
    model.start(Platform::runLater);
    answers.began().accept(model);
  }

  private void over(Path table, int lesson, Consumer<Path> over, Answers answers) {
    Optional<Path> before = lesson > 1 ? before(table) : Optional.empty();
    if (before.isEmpty()) {
      over.accept(table);
      return;
    }
    desk.background()
        .entry(
            watch -> {
              JoinedTable.join(before.get(), table, lesson);
              return table;
            },
            over,
            answers.failed());
  }

  /** The table of the session before. */
  private static Optional<Path> before(Path table) {
    Path whole = table.toAbsolutePath().normalize();
    String folder = whole.getName(whole.getNameCount() - 2).toString();
    int number = Integer.parseInt(folder.substring(LIVE.length()));
    Path earlier =
        whole.resolveSibling("../" + LIVE + (number - 1) + "/" + LiveSession.TABLE).normalize();
    return Optional.of(earlier).filter(Files::exists);
  }

  private void inFolder(Path instrument, Consumer<Path> then, Answers answers) {
    desk.background()
        .entry(watch -> freeFolder(instrument.resolve("runs")), then, answers.failed());
  }

  private static Path freeFolder(Path runs) throws IOException {
    int number = 1;
    while (Files.exists(runs.resolve(LIVE + number))) {
      number++;
    }
    return Files.createDirectories(runs.resolve(LIVE + number));
  }

  private static double seconds() {
    return System.nanoTime() / 1e9;
  }
}
