package faintwind.ui.turntable;

import faintwind.calibration.Provenance;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.guide.turntable.Advice;
import faintwind.guide.turntable.Advice.Action;
import faintwind.job.live.LiveSession;
import faintwind.job.live.RehearsalHand;
import faintwind.job.turntable.TurnBeat;
import faintwind.message.Messages;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The turntable while it is turned: looks at the session at every pulse, keeps the beat, and says
 * what to do. The session itself runs on a thread of its own.
 */
public final class LiveTableModel {
  /** The count-in is left out where time runs faster than this. */
  private static final double COUNTED_PACE = 3;

  private final Messages words;
  private final LiveSession session;
  private final LiveSession.Preparation preparation;
  private final Optional<RehearsalHand> hand;
  private final TurnBeat beat;
  private final Optional<TypedMeter> meter;
  private final Consumer<Path> done;
  private final ReadOnlyObjectWrapper<LiveTableView> view;
  private final ReadOnlyObjectWrapper<Next> next;
  private String ended = "";
  private boolean over;

  /**
   * What a session on the screen is made of.
   *
   * @param session records and guides
   * @param preparation what it follows
   * @param hand turns the arm of a rehearsal
   * @param beat sound and place of the beat
   * @param meter asks for readings where a person types them
   */
  record Bench(
      LiveSession session,
      LiveSession.Preparation preparation,
      Optional<RehearsalHand> hand,
      TurnBeat beat,
      Optional<TypedMeter> meter) {}

  /**
   * A session that begins.
   *
   * @param done takes the runs table on, when everything is turned or the person ends it
   */
  LiveTableModel(Messages words, Bench bench, Consumer<Path> done) {
    this.words = words;
    this.session = bench.session();
    this.preparation = bench.preparation();
    this.hand = bench.hand();
    this.beat = bench.beat();
    this.meter = bench.meter();
    this.done = done;
    LiveTableWords said = new LiveTableWords(words, preparation.plan());
    view = new ReadOnlyObjectWrapper<>(said.view(session, Optional.empty(), ""));
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.DOING, ""));
    say(session.look());
  }

  public ReadOnlyObjectProperty<LiveTableView> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** Whether it is a rehearsal. */
  public boolean rehearsal() {
    return session.provenance() == Provenance.REHEARSAL;
  }

  /** Records on a thread of its own; what the world refuses is said. */
  public void start(Consumer<Runnable> onScreen) {
    Thread thread =
        new Thread(
            () -> {
              try {
                session.run();
              } catch (IOException e) {
                onScreen.accept(() -> broke(e));
              }
            },
            "faintwind-live");
    thread.setDaemon(true);
    thread.start();
  }

  private void broke(IOException e) {
    ended = DiskWords.say(e, words);
    pulse();
  }

  /** Looks at the session; many times a second, on the JavaFX thread. */
  public void pulse() {
    LiveSession.Look look = session.look();
    OptionalDouble since_s = beat.since_s();
    if (since_s.isPresent() && since_s.getAsDouble() >= 0 && waitsToSpin(look)) {
      session.did();
      look = session.look();
    }
    if (!turns(look) && !waitsToSpin(look)) {
      beat.stop();
    }
    LiveTableWords said = new LiveTableWords(words, preparation.plan());
    view.set(said.view(session, countsIn(look), ended));
    say(look);
  }

  private static boolean waitsToSpin(LiveSession.Look look) {
    return look.advice().action() == Action.SPIN_NOW;
  }

  private static boolean turns(LiveSession.Look look) {
    Action action = look.advice().action();
    return action == Action.KEEP_TURNING || action == Action.STOP;
  }

  /** Beats still to come before the arm starts; empty where none is counted in. */
  private Optional<Integer> countsIn(LiveSession.Look look) {
    Optional<PlannedSpin> spin = look.advice().step().flatMap(PlannedStep::spin);
    OptionalDouble since_s = beat.since_s();
    return since_s.isPresent() && since_s.getAsDouble() < 0 && spin.isPresent()
        ? Optional.of((int) Math.ceil(-since_s.getAsDouble() / spin.get().beat().period_s()))
        : Optional.empty();
  }

  /** Where the arm should be: turns since the start of the spin, below zero in the count-in. */
  public OptionalDouble sweep_turns() {
    LiveSession.Look look = session.look();
    Optional<PlannedSpin> spin = look.advice().step().flatMap(PlannedStep::spin);
    if (spin.isEmpty()) {
      return OptionalDouble.empty();
    }
    double turns_1_s = spin.get().beat().turns_1_s();
    if (beat.since_s().isPresent()) {
      return OptionalDouble.of(beat.since_s().getAsDouble() * turns_1_s);
    }
    return turns(look)
        ? OptionalDouble.of((look.time_s() - look.since_s()) * turns_1_s)
        : OptionalDouble.empty();
  }

  /** The arm passes a mark: a tap on the key. */
  public void tap() {
    session.tap();
  }

  /** The meter whose readings are typed, if they are. */
  Optional<TypedMeter> meter() {
    return meter;
  }

  /** Notes what happened now with the run that is open. */
  void note(String text) {
    session.note(text);
  }

  /** How many seconds of a rehearsal pass in one. */
  public double pace() {
    return hand.map(RehearsalHand::pace).orElse(1.0);
  }

  /** From now on so many. */
  public void pace(double times) {
    hand.ifPresent(h -> h.pace(times));
  }

  /** What is followed, to be drawn. */
  Plan plan() {
    return preparation.plan();
  }

  /** What is turned, in a line. */
  String planned() {
    return new LiveTableWords(words, preparation.plan()).planned();
  }

  /** The session, to be drawn. */
  LiveSession session() {
    return session;
  }

  /** Ends recording and sound; what was done stays. */
  public void leave() {
    beat.close();
    end();
  }

  private void end() {
    try {
      session.stop();
    } catch (IOException e) {
      broke(e);
    }
  }

  private void did() {
    beat.stop();
    session.did();
    pulse();
  }

  /** Counts in where a person turns the arm; at once where time runs fast. */
  private void begin(PlannedSpin spin) {
    if (pace() > COUNTED_PACE) {
      did();
    } else {
      beat.start(spin.beat());
      pulse();
    }
  }

  private void finish() {
    over = true;
    leave();
    done.accept(session.table());
  }

  private void say(LiveSession.Look look) {
    Advice advice = look.advice();
    Next now = over ? next.get() : sentence(advice, look);
    if (!now.sentence().equals(next.get().sentence())
        || !now.detail().equals(next.get().detail())
        || now.act().isPresent() != next.get().act().isPresent()
        || now.others().size() != next.get().others().size()) {
      next.set(now);
    }
  }

  private Next sentence(Advice advice, LiveSession.Look look) {
    if (!ended.isEmpty()) {
      return Next.say(Mark.BLOCKED, ended);
    }
    boolean counting = countsIn(look).isPresent();
    boolean again = advice.action() == Action.STILL_CHECK && session.look().at() < lastStep();
    String doing = again ? "still-again" : word(advice.action());
    String key = "turntable.live.next." + (counting ? "count-in" : doing);
    Next said =
        new Next(
            advice.action().waits() || advice.action() == Action.DONE ? Mark.READY : Mark.DOING,
            words.text(key),
            detail(advice),
            counting ? Optional.empty() : act(advice),
            List.of());
    return counting ? said : others(said, advice);
  }

  private int lastStep() {
    return preparation.plan().steps().size() - 1;
  }

  private static String word(Action action) {
    return action.key().substring("live-guide.".length());
  }

  private String detail(Advice advice) {
    return advice
        .step()
        .flatMap(PlannedStep::spin)
        .map(spin -> LiveTableWords.spin(words, spin))
        .orElse("");
  }

  private Optional<Act> act(Advice advice) {
    return switch (advice.action()) {
      case SWITCH_ON -> act("live-heater-on", this::did);
      case SPIN_NOW ->
          act("live-spin", () -> begin(advice.step().flatMap(PlannedStep::spin).orElseThrow()));
      case STOP -> act("live-stopped", this::did);
      case DONE -> act("live-runs", this::finish);
      case KEEP_OFF, WARMING, KEEP_TURNING, STAND_BACK, MOVE_BALLS, STILL_CHECK -> Optional.empty();
    };
  }

  private Optional<Act> act(String id, Runnable run) {
    return Optional.of(new Act(id, words.text("turntable.live." + id + ".act"), run));
  }

  private Next others(Next said, Advice advice) {
    Next more =
        switch (advice.action()) {
          case WARMING, STAND_BACK, MOVE_BALLS ->
              said.withOther(act("live-go-on", this::did).orElseThrow());
          case KEEP_TURNING -> said.withOther(act("live-stop-early", this::did).orElseThrow());
          case KEEP_OFF, SWITCH_ON, SPIN_NOW, STOP, STILL_CHECK, DONE -> said;
        };
    return !session.spins().isEmpty() && advice.action() != Action.DONE
        ? more.withOther(act("live-end", this::finish).orElseThrow())
        : more;
  }
}
