package faintwind.calibration.fit.numerics;

import static faintwind.calibration.fit.numerics.StepWeights.STAGES;

import faintwind.calibration.fit.track.ArmAt;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.ThermalPath;
import java.util.Arrays;

/**
 * Steps of the heat balance by Runge and Kutta's fourth-order method: carried air V, difference and
 * resistor, with their changes with every unknown of a track.
 *
 * <p>Carried air: dV/dt = (share · arm − V)/time, after a stop at a rate that slows with (V/V at
 * the stop) to a power (0 a plain decay, 1 the drag of a turbulent swirl); what the ball feels of
 * it and of a draught: {@link SeenAir}. A first-order lag: common practice, no source.
 */
final class HeatStep {
  /** Least share of the air at the stop that the slowing decay is asked of. */
  private static final double LEAST_LEFT = 1e-3;

  private static final double LOG_LEAST_LEFT = Math.log(LEAST_LEFT);

  /**
   * Most of a step over the heater's time that Runge–Kutta bears (its limit is 2.78); in a longer
   * step, far from any change, the heater counts as that slow, which is next to nothing there. The
   * same holds for the carried air: beyond the limit its sensitivities grow without bound, and
   * rounding alone decides where a search goes.
   */
  private static final double STABLE = 2.2;

  private static final int V = 0;
  private static final int DELTA = 1;
  private static final int Q = 2;
  private static final int STATES = 3;

  private final Layout layout;
  private final Track track;
  private final ArmAt arm;
  private final SeenAir seen = new SeenAir();
  private final StepWeights weights = new StepWeights();
  private final double[] losses;
  private final double[][] out;
  private final double[] state = new double[STATES];
  private final double[] trial = new double[STATES];
  private final double[][] slope = new double[STAGES][STATES];
  private final double[][] by;
  private final int firstDraught;
  private final int own;
  private final Inputs inputs = new Inputs();

  private double[] values = {};
  private final Track.Grid grid;
  private ThermalPath path;
  private double share;
  private int run;
  private double ownDraught;
  private double draught;
  private double armSpeed;
  private double lastExponent;
  private double lastByTurn = 1;
  private double lastSlowed;
  private double lastByLeft = 1;

  /** Length of the present step, its time of the heater, and loss times temperature elsewhere. */
  private double h;

  private double tau;
  private boolean quick;
  private double referenceRate;
  private double reference_K;

  /** What the unknowns add to the sensitivities' rates beside A S, by stage. */
  private static final class Inputs {
    final double[] arm = new double[STAGES];
    final double[] carriedShare = new double[STAGES];
    final double[] rise = new double[STAGES];
    final double[] decay = new double[STAGES];
    final double[] byTurn = new double[STAGES];
    final double[] slowing = new double[STAGES];
    final double[] draught = new double[STAGES];
    final double[] ownDraught = new double[STAGES];
    final double[] loss = new double[STAGES];
    final double[] heaterShare = new double[STAGES];
    final double[] mismatch = new double[STAGES];
    final double[] feed = new double[STAGES];
    final double[] heating = new double[STAGES];
    final double[] heaterTime = new double[STAGES];
    final double[] byLoss = new double[STAGES];
  }

  HeatStep(Layout layout, ArmAt arm, Track track, int width) {
    this.layout = layout;
    this.track = track;
    this.arm = arm;
    this.grid = track.grid;
    this.path = ThermalPath.of(new double[layout.formula() - layout.losses()], 1, 1, 0);
    this.losses = new double[layout.losses()];
    this.out = new double[STAGES][3 + layout.losses()];
    this.by = new double[STATES][width];
    this.firstDraught = layout.shared() + 2;
    this.own = firstDraught + track.draughtColumns.length;
  }

  /** Puts the states to the start of the track. */
  void start(double[] values, ThermalPath path) {
    this.values = values;
    this.path = path;
    System.arraycopy(values, 0, losses, 0, losses.length);
    share = values[layout.carriedShare()];
    arm.set(values);
    armSpeed = arm.speed(grid.time_s[0]);
    for (double[] row : by) {
      Arrays.fill(row, 0);
    }
    state[V] = 0;
    state[DELTA] = values[track.deltaColumn];
    state[Q] = path.heating_K_s() * values[track.powerColumn];
    by[DELTA][layout.shared()] = 1;
    by[Q][layout.shared() + 1] = path.heating_K_s();
    by[Q][layout.path(ThermalPath.HEATING)] = values[track.powerColumn];
  }

  double[] losses() {
    return losses;
  }

  double armSpeed() {
    return armSpeed;
  }

  /** Draught at a time of the grid, m/s. */
  double draught(int k) {
    return values[layout.draught()] * values[track.draughtColumns[track.runAt[k]]];
  }

  double carried() {
    return state[V];
  }

  double delta() {
    return state[DELTA];
  }

  /** Change of the difference with the track's unknowns; this object's own. */
  double[] deltaBy() {
    return by[DELTA];
  }

  /** How many leading columns may hold something: those of turns that have not begun are 0. */
  int begun() {
    return Math.max(own, arm.begun());
  }

  /** From one time of the grid to the next. */
  void advance(int k, double referenceLoss_1_s, double reference_K) {
    double t = grid.time_s[k];
    run = track.runAt[k];
    ownDraught = values[track.draughtColumns[run]];
    draught = draught(k);
    h = grid.time_s[k + 1] - t;
    quick = path.heaterTime_s() < h / STABLE;
    tau = quick ? h / STABLE : path.heaterTime_s();
    this.reference_K = reference_K;
    referenceRate = referenceLoss_1_s * reference_K;
    System.arraycopy(state, 0, trial, 0, STATES);
    stage(k, 0);
    armSpeed = arm.speed(t + h / 2);
    reach(0, h / 2);
    stage(k, 1);
    reach(1, h / 2);
    stage(k, 2);
    armSpeed = arm.speed(t + h);
    reach(2, h);
    stage(k, 3);
    for (int s = 0; s < STATES; s++) {
      state[s] += h / 6 * (slope[0][s] + 2 * slope[1][s] + 2 * slope[2][s] + slope[3][s]);
    }
    double f = path.heaterShare();
    weights.form(h, f / tau, 1 / tau, 1 / (1 - f));
    carry();
    addInputs(t);
  }

  private void reach(int stage, double time) {
    for (int s = 0; s < STATES; s++) {
      trial[s] = state[s] + time * slope[stage][s];
    }
  }

  private void stage(int k, int i) {
    double f = path.heaterShare();
    carriedAir(i);
    seen.at(armSpeed - trial[V], draught);
    double ball_K = trial[DELTA] + reference_K;
    layout.model().loss(losses, seen.speed_m_s, ball_K, grid.air[k], out[i]);
    double power = grid.power[k];
    double heat = trial[Q] - out[i][0] * ball_K;
    double dDelta = heat / (1 - f) + referenceRate * (1 + path.mismatch());
    double dQ = (path.heating_K_s() * power - trial[Q]) / tau - f / tau * dDelta;
    slope[i][DELTA] = dDelta;
    slope[i][Q] = dQ;
    double bySpeed = ball_K * out[i][1] / (1 - f);
    weights.past[i] = seen.byPast * bySpeed;
    weights.loss[i] = (out[i][0] + out[i][2] * ball_K) / (1 - f);
    double byDraught = -seen.byDraught * bySpeed;
    inputs.draught[i] = byDraught * ownDraught;
    inputs.ownDraught[i] = byDraught * values[layout.draught()];
    inputs.loss[i] = -ball_K / (1 - f);
    inputs.heaterShare[i] = heat / ((1 - f) * (1 - f));
    inputs.mismatch[i] = referenceRate;
    inputs.feed[i] = -dDelta / tau;
    inputs.heating[i] = power / tau;
    inputs.heaterTime[i] = quick ? 0 : -dQ / tau;
  }

  /** The carried air's part of a stage. */
  private void carriedAir(int i) {
    double carrying = arm.carrying() * share;
    double settled = carrying * armSpeed;
    boolean decays = Math.abs(settled) < Math.abs(trial[V]);
    double time = values[decays ? layout.carriedDecay() : layout.carriedRise()];
    double slowing = decays ? values[layout.carriedSlowing()] : 0;
    double left = decays ? Math.max(LEAST_LEFT, Math.abs(trial[V]) / atStop()) : 1;
    double logLeft = decays ? logLeft(left) : 0;
    double logTurn = arm.lastLogTurn();
    double asked = (decays ? byLeft(slowing, logLeft) : byTurn(logTurn)) / time;
    double rate = Math.min(asked, STABLE / h);
    double dV = (settled - trial[V]) * rate;
    double byLogRate = rate < asked ? 0 : dV;
    boolean slows = decays && left > LEAST_LEFT;
    double bySlowing = slows ? slowing * byLogRate : 0;
    slope[i][V] = dV;
    weights.air[i] = (slows ? bySlowing / trial[V] : 0) - rate;
    inputs.arm[i] = carrying * rate;
    inputs.carriedShare[i] = arm.carrying() * armSpeed * rate - bySlowing / share;
    inputs.rise[i] = decays ? 0 : -byLogRate / time;
    inputs.decay[i] = decays ? -byLogRate / time : 0;
    inputs.byTurn[i] = decays ? 0 : -byLogRate * logTurn;
    inputs.slowing[i] = byLogRate * logLeft;
  }

  /** Logarithm of what is left of the carried air; the same once hardly any is. */
  private static double logLeft(double left) {
    return left == LEAST_LEFT ? LOG_LEAST_LEFT : Math.log(left);
  }

  /** What the air that is left makes of the decay; the same once hardly any is. */
  private double byLeft(double slowing, double logLeft) {
    double exponent = slowing * logLeft;
    if (exponent != lastSlowed) {
      lastSlowed = exponent;
      lastByLeft = Math.exp(exponent);
    }
    return lastByLeft;
  }

  /** What the time of a turn makes of the rise; the same all along the turn. */
  private double byTurn(double logTurn) {
    double exponent = -values[layout.carriedByTurn()] * logTurn;
    if (exponent != lastExponent) {
      lastExponent = exponent;
      lastByTurn = Math.exp(exponent);
    }
    return lastByTurn;
  }

  /** Carried air as the last stop left it, settled, m/s. */
  private double atStop() {
    return Math.max(1e-9, share * arm.lastFull());
  }

  /** S → Φ S. */
  private void carry() {
    int begun = begun();
    double[] air = by[V];
    double[] difference = by[DELTA];
    double[] resistor = by[Q];
    double[] d = weights.difference;
    double[] r = weights.resistor;
    double d0 = d[0];
    double d1 = d[1];
    double d2 = d[2];
    double r0 = r[0];
    double r1 = r[1];
    double r2 = r[2];
    double kept = weights.airKept;
    for (int j = 0; j < begun; j++) {
      double v = air[j];
      double x = difference[j];
      double q = resistor[j];
      air[j] = kept * v;
      difference[j] = d0 * v + d1 * x + d2 * q;
      resistor[j] = r0 * v + r1 * x + r2 * q;
    }
  }

  private void addInputs(double t) {
    toAir(layout.carriedShare(), inputs.carriedShare);
    toAir(layout.carriedRise(), inputs.rise);
    toAir(layout.carriedDecay(), inputs.decay);
    toAir(layout.carriedByTurn(), inputs.byTurn);
    toAir(layout.carriedSlowing(), inputs.slowing);
    toDifference(layout.draught(), inputs.draught);
    toDifference(firstDraught + run, inputs.ownDraught);
    toBoth(layout.path(ThermalPath.SHARE), inputs.heaterShare, inputs.feed);
    toDifference(layout.path(ThermalPath.MISMATCH), inputs.mismatch);
    toResistor(layout.path(ThermalPath.HEATING), inputs.heating);
    toResistor(layout.path(ThermalPath.HEATER_TIME), inputs.heaterTime);
    double[] byLoss = inputs.byLoss;
    for (int l = 0; l < losses.length; l++) {
      for (int i = 0; i < STAGES; i++) {
        byLoss[i] = inputs.loss[i] * out[i][3 + l];
      }
      toDifference(l, byLoss);
    }
    addArm(t, 0, 0);
    addArm(t + h / 2, 1, 2);
    addArm(t + h, 3, 3);
  }

  /** The arm's own unknowns, at a time that one stage or two share. */
  private void addArm(double t, int first, int last) {
    Arrays.fill(trial, 0);
    for (int i = first; i <= last; i++) {
      double u = inputs.arm[i];
      double past = weights.past[i];
      trial[V] += weights.airByAir[i] * u;
      trial[DELTA] += weights.byAir[i] * u - weights.byDifference[i] * past;
      trial[Q] += weights.resistorByAir[i] * u - weights.resistorByDifference[i] * past;
    }
    arm.addChange(t, values, trial, by);
  }

  private static boolean isNothing(double[] u) {
    return u[0] == 0 && u[1] == 0 && u[2] == 0 && u[3] == 0;
  }

  private void toAir(int column, double[] u) {
    if (isNothing(u)) {
      return;
    }
    add(by[V], column, weights.airByAir, u);
    add(by[DELTA], column, weights.byAir, u);
    add(by[Q], column, weights.resistorByAir, u);
  }

  private void toDifference(int column, double[] u) {
    if (isNothing(u)) {
      return;
    }
    add(by[DELTA], column, weights.byDifference, u);
    add(by[Q], column, weights.resistorByDifference, u);
  }

  private void toResistor(int column, double[] u) {
    if (isNothing(u)) {
      return;
    }
    add(by[DELTA], column, weights.byResistor, u);
    add(by[Q], column, weights.resistorByResistor, u);
  }

  /** Into the difference and the resistor, stage by stage. */
  private void toBoth(int column, double[] difference, double[] resistor) {
    double[] x = by[DELTA];
    double[] q = by[Q];
    for (int i = 0; i < STAGES; i++) {
      x[column] += weights.byDifference[i] * difference[i];
      x[column] += weights.byResistor[i] * resistor[i];
      q[column] += weights.resistorByDifference[i] * difference[i];
      q[column] += weights.resistorByResistor[i] * resistor[i];
    }
  }

  private static void add(double[] to, int column, double[] weight, double[] u) {
    double sum = to[column];
    for (int i = 0; i < STAGES; i++) {
      sum += weight[i] * u[i];
    }
    to[column] = sum;
  }
}
