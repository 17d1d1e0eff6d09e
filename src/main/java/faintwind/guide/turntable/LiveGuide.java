package faintwind.guide.turntable;

import static faintwind.guide.turntable.OwnChoices.DRIFTING;
import static faintwind.guide.turntable.OwnChoices.FLAT;
import static faintwind.guide.turntable.OwnChoices.LONGEST;
import static faintwind.guide.turntable.OwnChoices.NEARLY_FLAT;
import static faintwind.guide.turntable.OwnChoices.SLOPE_S;
import static faintwind.guide.turntable.OwnChoices.TURNING;
import static faintwind.guide.turntable.OwnChoices.UNSTEADY;

import faintwind.calibration.beat.Steadiness;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Series;
import faintwind.guide.turntable.Advice.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * Walks through a plan with the person at the turntable. Readings come by {@link #read}; what the
 * person did comes by {@link #did}: heater switched on, arm turning, arm stopped. It never goes
 * past those three by itself. Mutable; for one thread.
 */
public final class LiveGuide {
  private static final double PATH_STEPS = 240;
  private final Plan plan;
  private final SignalHistory history = new SignalHistory();
  private final RowTroubles rowTroubles = new RowTroubles();
  private final List<DoneStep> done = new ArrayList<>();
  private ExpectedCourse course;
  private int at;
  private double from_s;
  private boolean begun;
  private boolean turning;
  private Optional<Steadiness> steadiness = Optional.empty();
  private Advice advice;

  /**
   * A guide at the beginning of a plan.
   *
   * @param course how the signal should go as far as is known
   */
  public LiveGuide(Plan plan, ExpectedCourse course) {
    this.plan = plan;
    this.course = course;
    advice = new Advice(Action.KEEP_OFF, OptionalDouble.empty(), step(), List.of());
  }

  /** What was just advised. */
  public Advice advice() {
    return advice;
  }

  /** The planned steps that were gone through, in order. */
  public List<DoneStep> done() {
    return List.copyOf(done);
  }

  /** Where the plan stands: the number of the step that is open, from 0. */
  public int at() {
    return at;
  }

  /** When the open step began, s. */
  public double since_s() {
    return from_s;
  }

  /** How the signal should go, with what was learned so far. */
  public ExpectedCourse course() {
    return course;
  }

  private Optional<PlannedStep> step() {
    return at < plan.steps().size() ? Optional.of(plan.steps().get(at)) : Optional.empty();
  }

  /** Takes the next reading and says what to do. */
  public Advice read(LiveReading reading) {
    if (!begun) {
      from_s = reading.time_s();
      begun = true;
    }
    history.add(reading.time_s(), reading.signal());
    if (heaterIsOn()) {
      rowTroubles.supply(reading.supply_V());
    }
    advice = advise(reading.time_s());
    return advice;
  }

  /** How steadily the arm is turned, from taps; forgotten at the next stop. */
  public void steadiness(Steadiness latest) {
    steadiness = Optional.of(latest);
  }

  /**
   * The person has done what the advice waits for, or cuts short what it says: a warm-up or a rest
   * is over, the arm was stopped.
   */
  public void did(double time_s) {
    step().ifPresent(open -> did(open, time_s));
    advice = advise(time_s);
  }

  private void did(PlannedStep open, double time_s) {
    switch (open.kind()) {
      case ZERO -> {
        course = course.from(history.mean(from_s, time_s).orElse(course.offset()));
        close(time_s);
        rowTroubles.heaterOn();
      }
      case SPIN -> {
        if (turning) {
          learnSpin(open, time_s);
          close(time_s);
        } else {
          turning = true;
          from_s = time_s;
        }
      }
      case WARM_UP, REST, MOVE, STILL -> {
        if (open.kind() == PlannedStep.Kind.WARM_UP) {
          learnWarmUp(time_s);
        }
        close(time_s);
        turning = advice.action() == Action.SPIN_NOW;
      }
    }
  }

  private void close(double time_s) {
    done.add(new DoneStep(plan.steps().get(at), from_s, time_s));
    at++;
    from_s = time_s;
    turning = false;
    steadiness = Optional.empty();
  }

  private boolean heaterIsOn() {
    return step().filter(s -> s.kind() != PlannedStep.Kind.ZERO).isPresent();
  }

  private Advice advise(double time_s) {
    Optional<PlannedStep> open = step();
    if (open.isEmpty()) {
      return new Advice(Action.DONE, OptionalDouble.empty(), Optional.empty(), List.of());
    }
    double spent_s = time_s - from_s;
    return switch (open.get().kind()) {
      case ZERO -> still(Action.KEEP_OFF, Action.SWITCH_ON, open.get(), spent_s);
      case WARM_UP -> warming(open.get(), time_s, spent_s);
      case SPIN -> turning ? spinning(open.get(), spent_s) : spinNow(open.get());
      case REST -> resting(Action.STAND_BACK, open.get(), spent_s);
      case MOVE -> resting(Action.MOVE_BALLS, open.get(), spent_s);
      case STILL -> resting(Action.STILL_CHECK, open.get(), spent_s);
    };
  }

  private Advice still(Action wait, Action then, PlannedStep open, double spent_s) {
    double more_s = open.duration_s() - spent_s;
    List<Trouble> rows = rows();
    return more_s > 0
        ? new Advice(wait, OptionalDouble.of(more_s), Optional.of(open), rows)
        : new Advice(then, OptionalDouble.empty(), Optional.of(open), rows);
  }

  private Advice warming(PlannedStep open, double time_s, double spent_s) {
    Optional<WarmUpTrend> trend = trend(time_s);
    double planned_s = open.duration_s() - spent_s;
    double more_s = planned_s;
    if (trend.isPresent()) {
      double rest = Math.abs(trend.get().settled() - history.mean(time_s - 20, time_s).orElse(0));
      double whole = Math.abs(trend.get().settled() - course.offset());
      double wanted = planned_s > 0 ? FLAT : NEARLY_FLAT;
      more_s = rest > wanted * whole ? trend.get().time_s() * Math.log(rest / (wanted * whole)) : 0;
      more_s = planned_s > 0 ? Math.min(more_s, planned_s) : more_s;
    }
    List<Trouble> troubles = stillTroubles(time_s);
    new CourseTroubles(history, course).neverFlat(from_s).ifPresent(troubles::add);
    // once said it stands: noise about the threshold must not take the button from under the hand
    boolean ready = advice.action() == Action.SPIN_NOW;
    if (!ready && more_s > 0 && !has(troubles, Trouble.Kind.NEVER_FLAT)) {
      return new Advice(Action.WARMING, OptionalDouble.of(more_s), Optional.of(open), troubles);
    }
    return spinOrGoOn(time_s, troubles);
  }

  private Advice spinOrGoOn(double time_s, List<Trouble> troubles) {
    if (nextIs(PlannedStep.Kind.SPIN)) {
      return new Advice(Action.SPIN_NOW, OptionalDouble.empty(), next(), troubles);
    }
    close(time_s);
    return advise(time_s);
  }

  private static boolean has(List<Trouble> troubles, Trouble.Kind kind) {
    return troubles.stream().anyMatch(t -> t.kind() == kind);
  }

  /** The extrapolated warm-up; empty in its first time constant. */
  private Optional<WarmUpTrend> trend(double time_s) {
    double spent_s = time_s - from_s;
    return spent_s * course.still_1_s() < 1
        ? Optional.empty()
        : WarmUpTrend.of(history, from_s + spent_s / 4, time_s);
  }

  private Advice spinNow(PlannedStep open) {
    return new Advice(
        Action.SPIN_NOW, OptionalDouble.empty(), Optional.of(open), stillTroubles(from_s));
  }

  private Advice spinning(PlannedStep open, double spent_s) {
    PlannedSpin spin = open.spin().orElseThrow();
    double needs_s = TURNING / course.rate_1_s(spin.speed_m_s());
    double most_s = LONGEST * open.duration_s();
    double more_s = Math.min(most_s, Math.max(open.duration_s(), needs_s)) - spent_s;
    List<Trouble> troubles = rows();
    new CourseTroubles(history, course).reaction(from_s, spin.speed_m_s()).ifPresent(troubles::add);
    steadiness
        .filter(s -> s.unsteadiness() > UNSTEADY || Math.abs(s.drift()) > DRIFTING)
        .ifPresent(
            s ->
                troubles.add(
                    Trouble.of(
                        Trouble.Kind.UNSTEADY_ARM, 100 * s.unsteadiness(), 100 * s.drift())));
    return more_s > 0
        ? new Advice(Action.KEEP_TURNING, OptionalDouble.of(more_s), Optional.of(open), troubles)
        : new Advice(Action.STOP, OptionalDouble.empty(), Optional.of(open), troubles);
  }

  private Advice resting(Action action, PlannedStep open, double spent_s) {
    double more_s = open.duration_s() - spent_s;
    double now_s = from_s + spent_s;
    List<Trouble> troubles = action == Action.MOVE_BALLS ? rows() : stillTroubles(now_s);
    if (more_s > 0) {
      return new Advice(action, OptionalDouble.of(more_s), Optional.of(open), troubles);
    }
    return spinOrGoOn(now_s, troubles);
  }

  private List<Trouble> stillTroubles(double time_s) {
    List<Trouble> troubles = rows();
    CourseTroubles watch = new CourseTroubles(history, course);
    Optional<Trouble> reaction = watch.reaction(from_s, 0);
    reaction.ifPresent(troubles::add);
    if (reaction.isEmpty() && time_s > from_s) {
      watch.draught(from_s).ifPresent(troubles::add);
    }
    return troubles;
  }

  private List<Trouble> rows() {
    return new ArrayList<>(rowTroubles.now(history, course.settled(0) - course.offset()));
  }

  private Optional<PlannedStep> next() {
    return at + 1 < plan.steps().size() ? Optional.of(plan.steps().get(at + 1)) : Optional.empty();
  }

  private boolean nextIs(PlannedStep.Kind kind) {
    return next().filter(s -> s.kind() == kind).isPresent();
  }

  private void learnWarmUp(double time_s) {
    trend(time_s).ifPresent(t -> course = course.warmedUp(t.settled(), t.time_s()));
  }

  private void learnSpin(PlannedStep open, double time_s) {
    double speed_m_s = open.spin().orElseThrow().speed_m_s();
    double spent_s = time_s - from_s;
    if (spent_s * course.rate_1_s(speed_m_s) > 1) {
      WarmUpTrend.of(history, from_s + 5, time_s)
          .ifPresent(trend -> course = course.spun(speed_m_s, trend.settled()));
    }
  }

  /** Change of the signal per second over the last half minute; empty at the beginning. */
  public OptionalDouble slope_1_s() {
    double now_s = history.last_s();
    SimpleRegression line = history.line(now_s - SLOPE_S, now_s);
    return line.getN() < 5 ? OptionalDouble.empty() : OptionalDouble.of(line.getSlope());
  }

  /** The signal so far, thinned to a number of points; empty before the first reading. */
  public Optional<Series> trace(int points) {
    return history.isEmpty() ? Optional.empty() : Optional.of(history.thinned(points));
  }

  /** The expected signal from now to the end of the plan; empty before the first reading. */
  public Optional<Series> path() {
    if (history.isEmpty() || step().isEmpty()) {
      return Optional.empty();
    }
    double time_s = history.last_s();
    double signal = history.mean(time_s - 5, time_s).orElse(history.last());
    ExpectedPath path = new ExpectedPath(course, time_s, signal, plan.total_s() / PATH_STEPS);
    double more_s = advice.more_s().orElse(0);
    path.go(plan.steps().get(at), Math.max(1, more_s));
    for (int i = at + 1; i < plan.steps().size(); i++) {
      path.go(plan.steps().get(i), plan.steps().get(i).duration_s());
    }
    return Optional.of(path.series());
  }
}
