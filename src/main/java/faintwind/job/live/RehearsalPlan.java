package faintwind.job.live;

import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.PlannedStep.Kind;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.guide.turntable.ExpectedCourse;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is rehearsed: a made-up copper pair on an arm with two radii, six speeds from 0.15 to 2.4
 * m/s in one staircase, for practice.
 */
public final class RehearsalPlan {
  /**
   * Seed of the made-up build: half an inch of copper, a logger that gives kelvin once a second.
   */
  public static final long BUILD = 264;

  private static final double ZERO_S = 180;
  private static final double WARM_UP_S = 2400;
  private static final double REST_S = 150;
  private static final double MOVE_S = 60;
  private static final double STILL_S = 300;
  private static final List<Integer> A_TURN = List.of(8, 4, 2, 1);
  private static final int QUICKEST = 100;
  private static final double INNER_M = 0.3;
  private static final double OUTER_M = 0.6;

  private final List<PlannedStep> steps = new ArrayList<>();
  private double time_s;
  private double radius_m = OUTER_M;
  private int spins;

  private RehearsalPlan() {}

  /** The made-up instrument. */
  public static VirtualBuild build() {
    return VirtualDraw.build(BUILD);
  }

  /** How much is rehearsed. */
  public enum Length {
    /** Three speeds at one radius: an hour on the instrument's clock. */
    SHORT,
    /** Six speeds at two radii: two hours. */
    WHOLE
  }

  /** Plan and expectation. */
  public static LiveSession.Preparation preparation(Length length) {
    RehearsalPlan plan = new RehearsalPlan();
    plan.add(Kind.ZERO, ZERO_S, Optional.empty());
    plan.add(Kind.WARM_UP, WARM_UP_S, Optional.empty());
    plan.spin(OUTER_M, 0.6, Direction.CW);
    plan.spin(OUTER_M, 2.0, Direction.CCW);
    if (length == Length.WHOLE) {
      plan.spin(OUTER_M, 1.2, Direction.CW);
      plan.spin(INNER_M, 0.35, Direction.CCW);
      plan.spin(INNER_M, 0.15, Direction.CW);
      plan.spin(INNER_M, 0.25, Direction.CCW);
    }
    if (length == Length.SHORT) {
      plan.spin(OUTER_M, 0.3, Direction.CW);
    }
    plan.add(Kind.STILL, STILL_S, Optional.empty());
    Plan made = new Plan(Plan.Form.STAIRCASE, plan.steps, new Promise(0.02, List.of(), List.of()));
    return new LiveSession.Preparation(
        made, ExpectedCourse.before(response(), build().chain().scale()));
  }

  /**
   * A builder's own plan, to be rehearsed with a made-up pair that settles as slowly as the own one
   * should.
   *
   * @param build the made-up pair
   * @param preparation plan and expectation
   */
  public record Own(VirtualBuild build, LiveSession.Preparation preparation) {}

  /**
   * The rehearsal of a plan.
   *
   * @param plan one of the two of a session, or a lesson of it
   * @param own how the builder's instrument should answer
   */
  public static Own of(Plan plan, Response own) {
    Response usual = response();
    double slower = own.still_s().nominal() / usual.still_s().nominal();
    VirtualBuild made = build();
    VirtualBuild build =
        new VirtualBuild(
            made.heated().slower(slower),
            made.reference().slower(slower),
            made.heater(),
            made.chain(),
            made.arm(),
            made.room());
    Response expected =
        new Response(
            Interval.share(slower * usual.still_s().nominal(), 0.2),
            Interval.share(slower * usual.breeze_s().nominal(), 0.2),
            usual.still_K(),
            usual.noise_K(),
            usual.step_s());
    return new Own(
        build,
        new LiveSession.Preparation(plan, ExpectedCourse.before(expected, build.chain().scale())));
  }

  /** What a design of the kind would predict; not what the made-up build really does. */
  static Response response() {
    return new Response(Interval.share(480, 0.2), Interval.share(170, 0.2), 32, 0.02, 1);
  }

  private void spin(double at_m, double about_m_s, Direction direction) {
    if (at_m != radius_m) {
      add(Kind.MOVE, MOVE_S, Optional.empty());
      radius_m = at_m;
    }
    spins++;
    double turns_1_min = about_m_s * 60 / (2 * Math.PI * at_m);
    int aTurn = A_TURN.stream().filter(n -> n * turns_1_min <= QUICKEST).findFirst().orElse(1);
    Beat beat = new Beat((int) Math.round(aTurn * turns_1_min), aTurn);
    double lasts_s = 2 / (1 / 480.0 + 0.0038 * Math.pow(about_m_s, 0.55));
    int turns = (int) Math.max(1, Math.floor((lasts_s - 5) * beat.turns_1_s()));
    PlannedSpin spin =
        new PlannedSpin(
            spins, Uncertain.of(at_m, 0.001), beat, turns, direction, 0.003 * about_m_s);
    add(Kind.SPIN, 10 * Math.ceil(lasts_s / 10), Optional.of(spin));
    add(Kind.REST, REST_S, Optional.empty());
  }

  private void add(Kind kind, double duration_s, Optional<PlannedSpin> spin) {
    steps.add(new PlannedStep(kind, time_s, duration_s, 1, 1, spin));
    time_s += duration_s;
  }
}
