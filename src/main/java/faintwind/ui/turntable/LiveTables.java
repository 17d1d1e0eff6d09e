package faintwind.ui.turntable;

import faintwind.job.live.LiveInput;
import faintwind.job.live.LiveSession;
import faintwind.job.live.Rehearsal;
import faintwind.job.live.RehearsalHand;
import faintwind.job.live.RehearsalPlan;
import faintwind.job.turntable.TurnBeat;
import faintwind.ui.frame.Desk;
import faintwind.ui.listen.ListenModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
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

  private final Desk desk;
  private final Map<Path, LiveTableModel> running = new HashMap<>();
  private final Map<Path, Consumer<Path>> listening = new HashMap<>();

  private final Map<Path, ListenModel> recordings = new HashMap<>();

  public LiveTables(Desk desk) {
    this.desk = desk;
  }

  /** The session of an instrument, if one runs. */
  public Optional<LiveTableModel> of(Path instrument) {
    return Optional.ofNullable(running.get(instrument));
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

  /** Begins a rehearsal. */
  void rehearse(Path instrument, RehearsalPlan.Length length, Answers answers) {
    inFolder(
        instrument,
        folder -> {
          long seed = desk.clock().millis();
          Rehearsal rehearsal = new Rehearsal(RehearsalPlan.build(), seed, USUAL_PACE);
          RehearsalHand hand =
              new RehearsalHand(rehearsal, RehearsalHand.Lead.PERSON, seed, USUAL_PACE);
          LiveSession.Preparation plan = RehearsalPlan.preparation(length);
          begin(instrument, new Parts(rehearsal.input(), folder, plan, Optional.of(hand)), answers);
        },
        answers);
  }

  /** Records a source of readings along a plan. */
  void record(Path instrument, LiveInput input, LiveSession.Preparation plan, Answers answers) {
    inFolder(
        instrument,
        folder -> begin(instrument, new Parts(input, folder, plan, Optional.empty()), answers),
        answers);
  }

  /**
   * Who is told.
   *
   * @param began takes the session
   * @param over takes its runs table when it is over
   * @param failed takes what the world refused
   */
  public record Answers(
      Consumer<LiveTableModel> began, Consumer<Path> over, Consumer<IOException> failed) {}

  private record Parts(
      LiveInput input, Path folder, LiveSession.Preparation plan, Optional<RehearsalHand> hand) {}

  private void begin(Path instrument, Parts parts, Answers answers) {
    LiveSession session =
        new LiveSession(
            parts.input(), parts.folder(), parts.plan(), parts.hand(), LiveTables::seconds);
    TurnBeat beat = TurnBeat.heard(LiveTables::seconds);
    LiveTableModel model =
        new LiveTableModel(
            desk.words(),
            new LiveTableModel.Bench(session, parts.plan(), parts.hand(), beat),
            table -> {
              running.remove(instrument);
              listening.getOrDefault(instrument, answers.over()).accept(table);
            });
    running.put(instrument, model);
    model.start(Platform::runLater);
    answers.began().accept(model);
  }

  private void inFolder(Path instrument, Consumer<Path> then, Answers answers) {
    desk.background()
        .entry(watch -> freeFolder(instrument.resolve("runs")), then, answers.failed());
  }

  private static Path freeFolder(Path runs) throws IOException {
    int number = 1;
    while (Files.exists(runs.resolve("live-" + number))) {
      number++;
    }
    return Files.createDirectories(runs.resolve("live-" + number));
  }

  private static double seconds() {
    return System.nanoTime() / 1e9;
  }
}
