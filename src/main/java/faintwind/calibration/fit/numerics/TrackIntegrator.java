package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.track.ArmAt;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.ThermocoupleCurve;
import java.util.Arrays;

/**
 * Integrates the heat balance of {@link ThermalPath} along one track, together with the change of
 * every state with every unknown (forward sensitivities, from the same steps). Fourth-order
 * Runge–Kutta for carried air, difference and resistor; the bead's lag by its exact answer to a
 * straight line.
 *
 * <p>Carried air V: dV/dt = (share · arm − V)/time, after a stop at a rate that slows with (V/V at
 * the stop) to a power (0 a plain decay, 1 the drag of a turbulent swirl); what the ball feels of
 * it and of a draught: {@link SeenAir}. A first-order lag: common practice, no source.
 */
final class TrackIntegrator {
  /** Least share of the air at the stop that the slowing decay is asked of. */
  private static final double LEAST_LEFT = 1e-3;

  /**
   * Most of a step over the heater's time that Runge–Kutta bears (its limit is 2.78); in a longer
   * step, far from any change, the heater counts as that slow, which is next to nothing there.
   */
  private static final double STABLE = 2.2;

  private static final int STATES = 3;
  private static final int V = 0;
  private static final int DELTA = 1;
  private static final int Q = 2;

  private final Layout layout;
  private final Track track;
  private final int[] columns;
  private final int width;
  private final double[] lossValues;
  private final double[] out;
  private final double[] state = new double[STATES];
  private final double[] trial = new double[STATES];
  private final double[][] slope = new double[4][STATES];
  private final double[][] sensitivity;
  private final double[][] trialSensitivity;
  private final double[][][] slopeSensitivity;
  private final double[] armBy;
  private final ArmAt arm;
  private final SeenAir seen = new SeenAir();
  private final double[] referenceOut;

  /** Temperature of the reference ball over that of the air, K. */
  private double reference_K;

  /** Its loss, 1/s. */
  private double referenceLoss_1_s;

  /** Air speed past the ball at the averaged rows of the last run through. */
  final double[] speedAtRow;

  /** What the last run through says of the ball at the averaged rows. */
  final Whitening.Course course;

  TrackIntegrator(Layout layout, Track track) {
    this.layout = layout;
    this.track = track;
    this.columns = columnsOf(layout, track);
    this.width = columns.length;
    this.lossValues = new double[layout.losses()];
    this.out = new double[3 + layout.losses()];
    this.referenceOut = new double[3 + layout.losses()];
    this.sensitivity = new double[STATES][width];
    this.trialSensitivity = new double[STATES][width];
    this.slopeSensitivity = new double[4][STATES][width];
    this.armBy = new double[width];
    this.arm = new ArmAt(track, columns);
    this.speedAtRow = new double[track.rows.size()];
    this.course = new Whitening.Course(track.rows.size());
  }

  private static int[] columnsOf(Layout layout, Track track) {
    int[] columns = new int[layout.shared() + 2 + 6 * track.turns.size()];
    for (int i = 0; i < layout.shared(); i++) {
      columns[i] = i;
    }
    int next = layout.shared();
    columns[next++] = track.deltaColumn;
    columns[next++] = track.powerColumn;
    for (Turn turn : track.turns) {
      for (int column : turn.columns().all()) {
        if (column >= 0 && Arrays.stream(columns, 0, next).noneMatch(c -> c == column)) {
          columns[next++] = column;
        }
      }
    }
    return Arrays.copyOf(columns, next);
  }

  /** Indices of the unknowns that this track depends on; a row of the Jacobian is in this order. */
  int[] columns() {
    return columns;
  }

  /**
   * Predicted signal at every averaged row, and its change with the unknowns in {@link #columns()}.
   *
   * @param values values of all unknowns
   * @param predicted receives the signals
   * @param jacobian receives the changes, one array a row
   */
  void run(double[] values, double[] predicted, double[][] jacobian) {
    System.arraycopy(values, 0, lossValues, 0, lossValues.length);
    ThermalPath path =
        ThermalPath.of(
            Arrays.copyOfRange(values, layout.losses(), layout.formula()),
            layout.perKelvin(),
            layout.reference_K(),
            layout.bend());
    double share = values[layout.carriedShare()];
    start(values, path);
    double[] beadSensitivity = sensitivity[DELTA].clone();
    double bead = state[DELTA];
    Track.Grid grid = track.grid;
    int last = grid.time_s.length - 1;
    for (int k = 0; k <= last; k++) {
      if (grid.row[k] >= 0) {
        int row = grid.row[k];
        double ball_K = grid.air_K[k] + reference_K;
        predicted[row] = signal(path, bead, ball_K);
        jacobianRow(path, bead, ball_K, beadSensitivity, jacobian[row]);
        describe(values, path, k, row);
      }
      if (k < last) {
        double before = state[DELTA];
        double[] beforeSensitivity = sensitivity[DELTA].clone();
        step(k, values, path, share);
        followReference(k, values, path);
        double h = grid.time_s[k + 1] - grid.time_s[k];
        bead = followBead(path.beadTime_s(), h, before, beforeSensitivity, bead, beadSensitivity);
      }
    }
  }

  private void describe(double[] values, ThermalPath path, int k, int row) {
    double armSpeed = arm.speed(values, track.grid.time_s[k]);
    speedAtRow[row] = SeenAir.of(armSpeed - state[V], values[layout.draught()]);
    layout.model().loss(lossValues, speedAtRow[row], state[DELTA], track.grid.air[k], out);
    course.moved[row] = armSpeed != 0;
    course.rate_1_s[row] =
        Math.max(1e-5, (out[0] + out[2] * state[DELTA]) / (1 - path.heaterShare()));
    double perKelvin = Math.abs(layout.perKelvin());
    course.lossSignal_1_s[row] = out[0] * state[DELTA] * perKelvin;
    course.bySpeed_1_m[row] = out[1] * state[DELTA] * perKelvin;
    course.speed_m_s[row] = speedAtRow[row];
  }

  private void start(double[] values, ThermalPath path) {
    for (double[] row : sensitivity) {
      Arrays.fill(row, 0);
    }
    state[V] = 0;
    reference_K = track.grid.air[0].air_K() - track.grid.air_K[0];
    layout.model().loss(lossValues, 0, 0.1, track.grid.air[0], referenceOut);
    referenceLoss_1_s = referenceOut[0];
    state[DELTA] = values[track.deltaColumn];
    state[Q] = path.heating_K_s() * values[track.powerColumn];
    sensitivity[DELTA][layout.shared()] = 1;
    sensitivity[Q][layout.shared() + 1] = path.heating_K_s();
    sensitivity[Q][layout.path(ThermalPath.HEATING)] = values[track.powerColumn];
  }

  /** The reference ball over one step: it follows the air without a heater of its own. */
  private void followReference(int k, double[] values, ThermalPath path) {
    Track.Grid grid = track.grid;
    double h = grid.time_s[k + 1] - grid.time_s[k];
    double seen =
        SeenAir.of(arm.speed(values, grid.time_s[k + 1]) - state[V], values[layout.draught()]);
    double decay = Math.exp(-referenceLoss_1_s * (1 + path.mismatch()) * h);
    double next_K = k + 2 < grid.time_s.length ? grid.air_K[k + 1] : grid.air[k + 1].air_K();
    reference_K = reference_K * decay + grid.air_K[k] - next_K;
    layout.model().loss(lossValues, seen, reference_K, grid.air[k + 1], referenceOut);
    referenceLoss_1_s = referenceOut[0];
  }

  private static double signal(ThermalPath path, double bead, double air_K) {
    return path.offset() + path.curve().signal(bead, air_K);
  }

  private void jacobianRow(
      ThermalPath path, double bead, double air_K, double[] beadSensitivity, double[] row) {
    ThermocoupleCurve curve = path.curve();
    double scale = curve.signalByDelta(bead, air_K);
    for (int j = 0; j < width; j++) {
      row[j] = scale * beadSensitivity[j];
    }
    row[layout.path(ThermalPath.OFFSET)] += 1;
    row[layout.path(ThermalPath.SLOPE)] += curve.signalBySlope(bead, air_K);
  }

  /** The bead over one step, its input a straight line; returns its new value. */
  private double followBead(
      double lag, double h, double before, double[] beforeBy, double bead, double[] beadBy) {
    double decay = Math.exp(-h / lag);
    double rise = lag / h * (1 - decay);
    double keep = rise - decay;
    double now = 1 - rise;
    double after = state[DELTA];
    double[] afterBy = sensitivity[DELTA];
    int lagColumn = layout.path(ThermalPath.BEAD_TIME);
    double decayByLag = decay * h / (lag * lag);
    double riseByLag = (1 - decay) / h - lag / h * decayByLag;
    for (int j = 0; j < width; j++) {
      beadBy[j] = beadBy[j] * decay + keep * beforeBy[j] + now * afterBy[j];
    }
    beadBy[lagColumn] += bead * decayByLag + (riseByLag - decayByLag) * before - riseByLag * after;
    return bead * decay + keep * before + now * after;
  }

  private void step(int k, double[] values, ThermalPath path, double share) {
    double t = track.grid.time_s[k];
    double h = track.grid.time_s[k + 1] - t;
    double[] at = {0, 0.5, 0.5, 1};
    for (int stage = 0; stage < 4; stage++) {
      double[] from = stage == 0 ? null : slope[stage - 1];
      for (int s = 0; s < STATES; s++) {
        trial[s] = state[s] + (from == null ? 0 : at[stage] * h * from[s]);
        if (from == null) {
          System.arraycopy(sensitivity[s], 0, trialSensitivity[s], 0, width);
        } else {
          double[] rate = slopeSensitivity[stage - 1][s];
          double f = at[stage] * h;
          for (int j = 0; j < width; j++) {
            trialSensitivity[s][j] = sensitivity[s][j] + f * rate[j];
          }
        }
      }
      derivative(k, t + at[stage] * h, values, path, share, stage);
    }
    for (int s = 0; s < STATES; s++) {
      state[s] += h / 6 * (slope[0][s] + 2 * slope[1][s] + 2 * slope[2][s] + slope[3][s]);
      double[] a = slopeSensitivity[0][s];
      double[] b = slopeSensitivity[1][s];
      double[] c = slopeSensitivity[2][s];
      double[] d = slopeSensitivity[3][s];
      for (int j = 0; j < width; j++) {
        sensitivity[s][j] += h / 6 * (a[j] + 2 * b[j] + 2 * c[j] + d[j]);
      }
    }
  }

  /** Carried air as the last stop left it, settled, m/s. */
  private double atStop(double[] values, double share) {
    return Math.max(1e-9, share * arm.lastFull(values));
  }

  private void derivative(
      int k, double t, double[] values, ThermalPath path, double share, int stage) {
    Arrays.fill(armBy, 0);
    double armSpeed = arm.speed(values, t, armBy);
    double settled = arm.carrying() * share * armSpeed;
    boolean decays = Math.abs(settled) < Math.abs(trial[V]);
    int timeColumn = decays ? layout.carriedDecay() : layout.carriedRise();
    double slowing = decays ? values[layout.carriedSlowing()] : 0;
    double left = decays ? Math.max(LEAST_LEFT, Math.abs(trial[V]) / atStop(values, share)) : 1;
    double rate =
        (decays
                ? Math.pow(left, slowing)
                : Math.exp(-values[layout.carriedByTurn()] * arm.lastLogTurn()))
            / values[timeColumn];
    double carrying = arm.carrying() * share;
    double past = armSpeed - trial[V];
    seen.at(past, values[layout.draught()]);
    double delta = trial[DELTA];
    AirPoint air = track.grid.air[k];
    layout.model().loss(lossValues, seen.speed_m_s, delta + reference_K, air, out);
    double f = path.heaterShare();
    double shortest = (track.grid.time_s[k + 1] - track.grid.time_s[k]) / STABLE;
    boolean quick = path.heaterTime_s() < shortest;
    double tau = quick ? shortest : path.heaterTime_s();
    double power = track.grid.power[k];
    double dV = (settled - trial[V]) * rate;
    double referenceRate = referenceLoss_1_s * reference_K;
    double dDelta =
        (trial[Q] - out[0] * (delta + reference_K)) / (1 - f)
            + referenceRate * (1 + path.mismatch());
    double dQ = (path.heating_K_s() * power - trial[Q]) / tau - f / tau * dDelta;
    slope[stage][V] = dV;
    slope[stage][DELTA] = dDelta;
    slope[stage][Q] = dQ;
    double byV = left > LEAST_LEFT && decays ? slowing * dV / trial[V] : 0;
    double[] vBy = slopeSensitivity[stage][V];
    double[] deltaBy = slopeSensitivity[stage][DELTA];
    double[] qBy = slopeSensitivity[stage][Q];
    double total = out[0] + out[2] * (delta + reference_K);
    double heat = (delta + reference_K) * out[1] / (1 - f);
    double byPast = seen.byPast * heat;
    for (int j = 0; j < width; j++) {
      vBy[j] = (carrying * armBy[j] - trialSensitivity[V][j]) * rate + byV * trialSensitivity[V][j];
      deltaBy[j] =
          (trialSensitivity[Q][j] - total * trialSensitivity[DELTA][j]) / (1 - f)
              - byPast * (armBy[j] - trialSensitivity[V][j]);
    }
    deltaBy[layout.draught()] -= seen.byDraught * heat;
    vBy[layout.carriedShare()] += arm.carrying() * armSpeed * rate;
    vBy[timeColumn] -= dV / values[timeColumn];
    if (!decays) {
      vBy[layout.carriedByTurn()] -= dV * arm.lastLogTurn();
    } else {
      vBy[layout.carriedSlowing()] += dV * Math.log(left);
      vBy[layout.carriedShare()] -= left > LEAST_LEFT ? slowing * dV / share : 0;
    }
    for (int i = 0; i < lossValues.length; i++) {
      deltaBy[i] -= (delta + reference_K) * out[3 + i] / (1 - f);
    }
    deltaBy[layout.path(ThermalPath.SHARE)] +=
        (trial[Q] - out[0] * (delta + reference_K)) / ((1 - f) * (1 - f));
    deltaBy[layout.path(ThermalPath.MISMATCH)] += referenceRate;
    for (int j = 0; j < width; j++) {
      qBy[j] = -trialSensitivity[Q][j] / tau - f / tau * deltaBy[j];
    }
    qBy[layout.path(ThermalPath.HEATING)] += power / tau;
    qBy[layout.path(ThermalPath.SHARE)] -= dDelta / tau;
    if (!quick) {
      qBy[layout.path(ThermalPath.HEATER_TIME)] -= dQ / tau;
    }
  }
}
