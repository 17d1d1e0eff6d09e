package faintwind.calibration.virtual;

import faintwind.calibration.run.Direction;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.physics.AirState;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * The made-up instrument as it runs: balls, resistor, junction, room and logger, advanced in time.
 * Starts cold at time 0 with the arm at rest. Mutable; for one thread. The same build, seed and
 * calls give the same numbers.
 *
 * <p>Live rehearsal: say what happens from now on with {@link #stage} or {@link #blow}, then read
 * with {@link #sampleAt}.
 */
public final class VirtualInstrument {
  private static final double UNSTEADY_TIME_S = 3;
  private static final double WANDER_TIME_S = 900;
  private static final double DRAUGHT_TIME_S = 20;
  private static final double AIR_PROBE_NOISE_K = 0.05;
  private static final double SUPPLY_NOISE_V = 0.001;

  private final VirtualBuild build;
  private final VirtualHeat heat;
  private final RandomGenerator physics;
  private final RandomGenerator logger;
  private double time_s;
  private VirtualStage stage = VirtualStage.rest(1, Heater.OFF);
  private double blown_m_s;
  private double arm_m_s;

  /** The way the arm turned last; air that goes with it counts above 0. */
  private Direction turned = Direction.CW;

  private double carried_m_s;
  private double atStop_m_s;
  private double unsteady;
  private double wander_K;
  private double draughtAlong_m_s;
  private double draughtAcross_m_s;
  private double path_m;
  private double turned_m_s;
  private double throughAir_m;

  public VirtualInstrument(VirtualBuild build, long seed) {
    this.build = build;
    this.heat = new VirtualHeat(build);
    this.physics = new Well19937c(seed);
    this.logger = new Well19937c(seed ^ 0x5DEECE66DL);
  }

  /** From now on this stage, until something else is said; its duration is not looked at. */
  public void stage(VirtualStage next) {
    if (next.speed_m_s() > 0 && next.direction() != turned) {
      turned = next.direction();
      carried_m_s = -carried_m_s;
    }
    stage = next;
    blown_m_s = 0;
  }

  /** From now on a steady flow of undisturbed air past the resting pair. */
  public void blow(double speed_m_s, Heater heater) {
    stage = VirtualStage.rest(1, heater);
    blown_m_s = speed_m_s;
  }

  /** Balls, resistor and junction as after hours at the stage or flow last said. */
  public void settle() {
    heat.settle(air(), airSpeed_m_s(), power_W());
  }

  /**
   * Advances to a time and reads the logger there.
   *
   * @throws IllegalArgumentException where the time lies before the last one
   */
  public VirtualSample sampleAt(double t_s) {
    advanceTo(t_s);
    VirtualChain chain = build.chain();
    double signal = chain.logged(exactSignal(), logger.nextGaussian());
    double air_K = air().temperature_K() + AIR_PROBE_NOISE_K * logger.nextGaussian();
    double supply_V = exactSupply_V() + SUPPLY_NOISE_V * logger.nextGaussian();
    double stamp_s = t_s + chain.reading().jitter_s() * clipped(logger.nextGaussian());
    return new VirtualSample(stamp_s, signal, round(air_K, 0.01), round(supply_V, 0.001));
  }

  /** Advances without reading; a time already reached is refused. */
  public void advanceTo(double t_s) {
    if (t_s < time_s) {
      throw new IllegalArgumentException("t_s = " + t_s + ", allowed from " + time_s);
    }
    while (time_s < t_s - 1e-9) {
      double step_s = Math.min(VirtualHeat.MAX_STEP_S, t_s - time_s);
      drawRoom(step_s);
      double speed_m_s = airSpeed_m_s();
      heat.step(step_s, air(), speed_m_s, power_W());
      throughAir_m += speed_m_s * step_s;
      path_m += turned_m_s * (1 + unsteady) * step_s;
      time_s += step_s;
    }
  }

  public double time_s() {
    return time_s;
  }

  /** True speed of the air past the heated ball now, m/s. */
  public double airSpeed_m_s() {
    double past_m_s = arm_m_s * (1 + unsteady) - carried_m_s;
    double along = blown_m_s + Math.abs(past_m_s) + draughtAlong_m_s;
    return Math.hypot(along, draughtAcross_m_s);
  }

  /** Length of the path that the measured radius has swept since the start, m. */
  public double path_m() {
    return path_m;
  }

  /** Length of air that has passed the ball since the start, m. */
  double throughAir_m() {
    return throughAir_m;
  }

  /** The state of the room's air now. */
  public AirState air() {
    AirState start = build.room().air();
    double temperature_K =
        start.temperature_K() + build.room().drift_K_h() * time_s / 3600 + wander_K;
    return new AirState(temperature_K, start.pressure_Pa(), start.relativeHumidity());
  }

  private double exactSignal() {
    return build.chain().signal(heat.warmJunction_K(), heat.coolJunction_K());
  }

  private double exactSupply_V() {
    return stage.heater() == Heater.ON ? build.heater().volts(time_s) : 0;
  }

  private double power_W() {
    return stage.heater() == Heater.ON ? build.heater().power_W(time_s) : 0;
  }

  private void drawRoom(double step_s) {
    VirtualArm arm = build.arm();
    unsteady = next(unsteady, arm.unsteadiness(), UNSTEADY_TIME_S, step_s);
    wander_K = next(wander_K, build.room().wander_K(), WANDER_TIME_S, step_s);
    double draught = build.room().draught_m_s();
    draughtAlong_m_s = next(draughtAlong_m_s, draught, DRAUGHT_TIME_S, step_s);
    draughtAcross_m_s = next(draughtAcross_m_s, draught, DRAUGHT_TIME_S, step_s);
    double wanted_m_s = arm.ballSpeed_m_s(stage);
    arm_m_s = lagging(arm_m_s, wanted_m_s, step_s);
    turned_m_s = lagging(turned_m_s, stage.speed_m_s(), step_s);
    double settled_m_s = arm.carried().share() * arm_m_s;
    if (settled_m_s >= carried_m_s) {
      atStop_m_s = carried_m_s;
    }
    double rate_1_s =
        settled_m_s >= carried_m_s
            ? 1 / arm.carried().rise_s()
            : arm.carried().decayRate_1_s(carried_m_s / atStop_m_s);
    carried_m_s += (settled_m_s - carried_m_s) * (1 - Math.exp(-step_s * rate_1_s));
  }

  /** One step of a speed of the arm towards what is wanted: it is slow to come and to go. */
  private double lagging(double speed_m_s, double wanted_m_s, double step_s) {
    VirtualArm.Inertia inertia = build.arm().inertia();
    double inertia_s = wanted_m_s > speed_m_s ? inertia.up_s() : inertia.down_s();
    return speed_m_s + (wanted_m_s - speed_m_s) * (1 - Math.exp(-step_s / inertia_s));
  }

  /** One step of an Ornstein–Uhlenbeck process (exact in the step). */
  private double next(double value, double deviation, double time_s, double step_s) {
    double keep = Math.exp(-step_s / time_s);
    return value * keep + deviation * Math.sqrt(1 - keep * keep) * physics.nextGaussian();
  }

  private static double clipped(double gaussian) {
    return Math.max(-3, Math.min(3, gaussian));
  }

  private static double round(double value, double unit) {
    return Math.rint(value / unit) * unit;
  }
}
