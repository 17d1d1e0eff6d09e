package faintwind.job.live;

import faintwind.calibration.Provenance;
import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.SpinTurns;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import faintwind.guide.turntable.Advice;
import faintwind.guide.turntable.DoneStep;
import faintwind.guide.turntable.ExpectedCourse;
import faintwind.guide.turntable.LiveGuide;
import faintwind.guide.turntable.LiveReading;
import faintwind.job.OutputPath;
import faintwind.job.World;
import faintwind.job.turntable.SessionNote;
import faintwind.job.turntable.SessionTable;
import faintwind.job.turntable.SpinDone;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * A turntable session while it happens. Rows go into the run file first, then to the guide; taps
 * become turns; the runs table beside the recording is written anew after each step, so that a
 * session that breaks off can be fitted as far as it went. Safe from any thread; {@link #run} works
 * on the thread that calls it.
 */
public final class LiveSession {
  /** Name of the recording in the session's folder. */
  public static final String RECORDING = "session.csv";

  /** Name of the runs table beside it. */
  public static final String TABLE = "runs.csv";

  private static final int LEAST_MARKS = 4;
  private static final int MARKS_A_LOOK = 8;
  private static final double TAPPED_PACE = 3;

  /** Steadiness while it turns is that of the last marks. */
  private static final int LATEST_MARKS = 400;

  private final LiveRecording recording;
  private final Provenance provenance;
  private final SignalUnit unit;
  private final Path folder;
  private final LiveGuide guide;
  private final Optional<RehearsalHand> hand;
  private final DoubleSupplier seconds;
  private final List<Double> marks = new ArrayList<>();
  private final List<SpinDone> spins = new ArrayList<>();
  private Optional<LiveRow> last = Optional.empty();
  private double lastAt_s;
  private final List<SessionNote> notes = new ArrayList<>();
  private boolean asked;
  private double clockTime_s;
  private double clockAt_s;
  private boolean personTaps;
  private Optional<Problem> news = Optional.empty();
  private Optional<IOException> worldFailed = Optional.empty();

  /**
   * A session that has not begun.
   *
   * @param input what is recorded
   * @param folder where recording and table go; there already
   * @param plan what is planned
   * @param hand turns the arm of a rehearsal; empty for an instrument of metal
   * @param seconds the computer's own time, rising, s
   */
  public LiveSession(
      LiveInput input,
      Path folder,
      Preparation plan,
      Optional<RehearsalHand> hand,
      DoubleSupplier seconds) {
    double still = Math.abs(plan.course().settled(0));
    Possible possible = input.possible().byDesign(input.head().unit(), still);
    recording =
        new LiveRecording(
            input.within(possible),
            new OutputPath(folder.resolve(RECORDING), OutputPath.Existing.KEEP));
    provenance = input.head().provenance();
    unit = input.head().unit();
    this.folder = folder;
    this.hand = hand;
    this.seconds = seconds;
    guide = new LiveGuide(plan.plan(), plan.course());
    recording.listen(
        new LiveListener() {
          @Override
          public void row(LiveRow row) {
            take(row);
          }

          @Override
          public void happened(LiveNews what) {
            note(what);
          }
        });
  }

  /**
   * What a session starts from.
   *
   * @param plan what is planned
   * @param course how the signal should go as far as is known
   */
  public record Preparation(Plan plan, ExpectedCourse course) {}

  /**
   * A look at the session.
   *
   * @param advice what to do
   * @param at number of the open step, from 0
   * @param since_s when it began, on the recording's clock
   * @param time_s the recording's clock now
   * @param row the last row
   * @param marks taps of the spin that is open, on the recording's clock
   * @param news what happened to the source last, where it matters now
   */
  public record Look(
      Advice advice,
      int at,
      double since_s,
      double time_s,
      Optional<LiveRow> row,
      List<Double> marks,
      Optional<Problem> news) {
    public Look {
      marks = List.copyOf(marks);
    }
  }

  /** Records until the source ends or {@link #stop}; what arrived stays. */
  public void run() throws IOException {
    Checked<LiveCount> count = recording.run();
    synchronized (this) {
      // nothing arrived, or nothing fitted: said where the source's news stand
      news = count.fold((done, notes) -> news, problems -> Optional.of(problems.get(0)));
      if (worldFailed.isPresent()) {
        throw worldFailed.get();
      }
    }
  }

  /** Ends the recording; the table holds what was done. */
  public void stop() throws IOException {
    recording.stop();
  }

  /** The runs table; there once the first step is over. */
  public Path table() {
    return folder.resolve(TABLE);
  }

  /** Whether it is a rehearsal. */
  public Provenance provenance() {
    return provenance;
  }

  /** Unit of the signal. */
  public SignalUnit unit() {
    return unit;
  }

  /** Change of the signal per second over the last half minute; empty at the beginning. */
  public synchronized OptionalDouble slope_1_s() {
    return guide.slope_1_s();
  }

  /** How things stand. */
  public synchronized Look look() {
    return new Look(guide.advice(), guide.at(), guide.since_s(), clock_s(), last, marks, news);
  }

  /** The steps that were gone through. */
  public synchronized List<DoneStep> done() {
    return guide.done();
  }

  /** The spins that were turned. */
  public synchronized List<SpinDone> spins() {
    return List.copyOf(spins);
  }

  /** The signal so far, thinned to a number of points. */
  public synchronized Optional<Series> trace(int points) {
    return guide.trace(points);
  }

  /** The signal that is expected from now on. */
  public synchronized Optional<Series> path() {
    return guide.path();
  }

  /** The person has done what the advice says, or cuts it short. */
  public synchronized void did() {
    int before = guide.at();
    guide.did(clock_s());
    hand.ifPresent(h -> h.follows(guide.advice()));
    if (guide.at() != before) {
      stepped();
    }
  }

  /**
   * The arm passes a mark now. In a rehearsal the person's taps take the place of the made-up
   * hand's, until the spin is over; where time runs faster nobody can tap.
   */
  public synchronized void tap() {
    if (hand.filter(h -> h.pace() > TAPPED_PACE).isPresent()) {
      return;
    }
    if (hand.isPresent() && !personTaps) {
      marks.clear();
    }
    personTaps = true;
    mark(clock_s());
  }

  /** The recording's clock shows that time at this moment: a person is asked for a reading. */
  public synchronized void clockShows(double time_s) {
    asked = true;
    clockTime_s = time_s;
    clockAt_s = seconds.getAsDouble();
  }

  /** Notes what happened now; it stands with the run that is open. */
  public synchronized void note(String text) {
    notes.add(new SessionNote(clock_s(), text));
    writeTable();
  }

  /** Corrects the turns of a spin that was counted by a person. */
  public synchronized Checked<SpinTurns> count(int spin, double turns, double time_s) {
    SpinDone was = spins.get(spin);
    DoneStep step = was.step();
    Checked<SpinTurns> typed =
        SpinTurns.typed(
            turns, time_s, step.step().spin().orElseThrow(), step.to_s() - step.from_s());
    if (typed instanceof Checked.Ok<SpinTurns> ok) {
      replace(spin, ok.value(), ok.notes());
    }
    return typed;
  }

  /** Takes turns found in a sound recording for those of a spin. */
  public synchronized void count(int spin, SpinTurns heard, List<Problem> doubts) {
    replace(spin, heard, doubts);
  }

  private void replace(int spin, SpinTurns turns, List<Problem> doubts) {
    spins.set(spin, new SpinDone(spins.get(spin).step(), turns, doubts));
    writeTable();
  }

  private synchronized void take(LiveRow row) {
    last = Optional.of(row);
    lastAt_s = seconds.getAsDouble();
    news = Optional.empty();
    if (row.signal().isEmpty()) {
      return;
    }
    int before = guide.at();
    guide.read(new LiveReading(row.time_s(), row.signal().getAsDouble(), row.supply_V()));
    List<Double> passed = hand.map(h -> h.passes(row.time_s())).orElse(List.of());
    if (!personTaps) {
      passed.forEach(this::mark);
    }
    if (guide.at() != before) {
      stepped();
    }
    if (guide.advice().action().waits() && hand.filter(RehearsalHand::leads).isPresent()) {
      did();
    }
    if (guide.advice().action() == Advice.Action.DONE) {
      end();
    }
  }

  private void end() {
    try {
      recording.stop();
    } catch (IOException e) {
      failed(e);
    }
  }

  private void failed(IOException e) {
    worldFailed = Optional.of(e);
    news = Optional.of(World.problem(e));
  }

  private synchronized void note(LiveNews what) {
    if (what.kind() != LiveNews.Kind.CONNECTED) {
      news = Optional.of(what.problem());
    }
  }

  /** The recording's clock between two rows goes on with the computer's own. */
  private double clock_s() {
    if (asked) {
      return clockTime_s + seconds.getAsDouble() - clockAt_s;
    }
    if (last.isEmpty()) {
      return 0;
    }
    double pace = hand.map(RehearsalHand::pace).orElse(1.0);
    double since_s = (seconds.getAsDouble() - lastAt_s) * pace;
    return last.get().time_s() + Math.min(since_s, hand.isPresent() ? 1 : 5);
  }

  private void mark(double time_s) {
    boolean turns =
        guide.advice().action() == Advice.Action.KEEP_TURNING
            || guide.advice().action() == Advice.Action.STOP;
    if (turns && time_s > guide.since_s()) {
      marks.add(time_s);
      if (marks.size() % MARKS_A_LOOK == 0) {
        turning().ifPresent(t -> guide.steadiness(t.steadiness()));
      }
    }
  }

  /** What the latest taps of the open spin come to. */
  public synchronized Optional<BeatTimes.Turning> turning() {
    Optional<PlannedSpin> spin = guide.advice().step().flatMap(PlannedStep::spin);
    if (spin.isEmpty() || marks.size() < LEAST_MARKS) {
      return Optional.empty();
    }
    List<Double> latest = marks.subList(Math.max(0, marks.size() - LATEST_MARKS), marks.size());
    Checked<BeatTimes> times = BeatTimes.of(latest, spin.get().beat().aTurn());
    return times.fold((value, notes) -> Optional.of(value.turning()), problems -> Optional.empty());
  }

  /** How far the last taps come after the beat, s; below zero where they come before it. */
  public synchronized double behind_s() {
    Optional<PlannedSpin> spin = guide.advice().step().flatMap(PlannedStep::spin);
    double period_s = spin.map(s -> s.beat().period_s()).orElse(1.0);
    List<Double> latest = marks.subList(Math.max(0, marks.size() - MARKS_A_LOOK), marks.size());
    return latest.stream()
        .mapToDouble(t -> Math.IEEEremainder(t - guide.since_s(), period_s))
        .average()
        .orElse(0);
  }

  private void stepped() {
    List<DoneStep> done = guide.done();
    DoneStep ended = done.get(done.size() - 1);
    if (ended.step().kind() == PlannedStep.Kind.SPIN) {
      spins.add(spun(ended));
      marks.clear();
      personTaps = false;
    }
    writeTable();
  }

  private SpinDone spun(DoneStep ended) {
    PlannedSpin planned = ended.step().spin().orElseThrow();
    Checked<BeatTimes> times = BeatTimes.of(marks, planned.beat().aTurn());
    SpinTurns byBeat = SpinTurns.byBeat(planned, ended.to_s() - ended.from_s());
    return times.fold(
        (value, notes) ->
            value.turning().turns() > 0
                ? new SpinDone(ended, SpinTurns.marked(value.turning()), notes)
                : new SpinDone(ended, byBeat, notes),
        problems -> new SpinDone(ended, byBeat, List.of()));
  }

  private void writeTable() {
    try {
      SessionTable.write(
          table(), new SessionTable.Source(RECORDING, provenance), guide.done(), spins, notes);
      worldFailed = Optional.empty();
    } catch (IOException e) {
      failed(e);
    }
  }
}
