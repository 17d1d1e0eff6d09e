package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.track.ArmAt;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.ThermocoupleCurve;
import java.util.Arrays;

/**
 * Integrates the heat balance of {@link ThermalPath} along one track, together with the change of
 * every state with every unknown (forward sensitivities, from the same steps). Fourth-order
 * Runge–Kutta for carried air, difference and resistor ({@link HeatStep}); the bead's lag by its
 * exact answer to a straight line.
 */
final class TrackIntegrator {
  private final Layout layout;
  private final Track track;
  private final int[] columns;
  private final int width;
  private final double[] out;
  private final HeatStep step;
  private final double[] beadBy;

  /** Temperature of the reference ball over that of the air, K. */
  private double reference_K;

  /** Its loss, 1/s. */
  private double referenceLoss_1_s;

  /** The step of before, and what the bead's lag leaves over it. */
  private double lastStep_s;

  private double lastDecay;

  /** Speed of the arm, carried air and difference at the averaged rows, for the course. */
  private final double[] armAtRow;

  private final double[] carriedAtRow;
  private final double[] deltaAtRow;
  private final Whitening.Course course;
  private final SeenAir seen = new SeenAir();
  private double[] values = {};
  private boolean described;

  TrackIntegrator(Layout layout, Track track) {
    this.layout = layout;
    this.track = track;
    this.columns = columnsOf(layout, track);
    this.width = columns.length;
    this.out = new double[3 + layout.losses()];
    this.step = new HeatStep(layout, new ArmAt(track, columns), track, width);
    this.beadBy = new double[width];
    int rows = track.rows.size();
    this.armAtRow = new double[rows];
    this.carriedAtRow = new double[rows];
    this.deltaAtRow = new double[rows];
    this.course = new Whitening.Course(rows);
  }

  private static int[] columnsOf(Layout layout, Track track) {
    int[] columns =
        new int[layout.shared() + 2 + track.draughtColumns.length + 6 * track.turns.size()];
    for (int i = 0; i < layout.shared(); i++) {
      columns[i] = i;
    }
    int next = layout.shared();
    columns[next++] = track.deltaColumn;
    columns[next++] = track.powerColumn;
    for (int column : track.draughtColumns) {
      columns[next++] = column;
    }
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
    this.values = values;
    described = false;
    ThermalPath path = path();
    start(path);
    double bead = step.delta();
    Track.Grid grid = track.grid;
    int last = grid.time_s.length - 1;
    for (int k = 0; k <= last; k++) {
      int row = grid.row[k];
      if (row >= 0) {
        double ball_K = grid.air_K[k] + reference_K;
        predicted[row] = path.offset() + path.curve().signal(bead, ball_K);
        jacobianRow(path.curve(), bead, ball_K, jacobian[row]);
        armAtRow[row] = step.armSpeed();
        carriedAtRow[row] = step.carried();
        deltaAtRow[row] = step.delta();
      }
      if (k < last) {
        bead = follow(k, path, bead);
      }
    }
  }

  private ThermalPath path() {
    return ThermalPath.of(
        Arrays.copyOfRange(values, layout.losses(), layout.formula()),
        layout.perKelvin(),
        layout.reference_K(),
        layout.bend());
  }

  private void start(ThermalPath path) {
    reference_K = track.grid.air[0].air_K() - track.grid.air_K[0];
    step.start(values, path);
    layout.model().loss(step.losses(), 0, 0.1, track.grid.air[0], out);
    referenceLoss_1_s = out[0];
    lastStep_s = 0;
    Arrays.fill(beadBy, 0);
    beadBy[layout.shared()] = 1;
  }

  /** One step of all states, the bead last; returns the bead's new value. */
  private double follow(int k, ThermalPath path, double bead) {
    double h = track.grid.time_s[k + 1] - track.grid.time_s[k];
    double lag = path.beadTime_s();
    if (h != lastStep_s) {
      lastStep_s = h;
      lastDecay = Math.exp(-h / lag);
    }
    double decay = lastDecay;
    double rise = lag / h * (1 - decay);
    double keep = rise - decay;
    double now = 1 - rise;
    double decayByLag = decay * h / (lag * lag);
    double riseByLag = (1 - decay) / h - lag / h * decayByLag;
    double before = step.delta();
    double[] deltaBy = step.deltaBy();
    int begun = step.begun();
    for (int j = 0; j < begun; j++) {
      beadBy[j] = beadBy[j] * decay + keep * deltaBy[j];
    }
    step.advance(k, referenceLoss_1_s, reference_K);
    followReference(k, path, h);
    double after = step.delta();
    begun = step.begun();
    for (int j = 0; j < begun; j++) {
      beadBy[j] += now * deltaBy[j];
    }
    beadBy[layout.path(ThermalPath.BEAD_TIME)] +=
        bead * decayByLag + (riseByLag - decayByLag) * before - riseByLag * after;
    return bead * decay + keep * before + now * after;
  }

  /** The reference ball over one step: it follows the air without a heater of its own. */
  private void followReference(int k, ThermalPath path, double h) {
    Track.Grid grid = track.grid;
    double next_K = k + 2 < grid.time_s.length ? grid.air_K[k + 1] : grid.air[k + 1].air_K();
    double kept = reference_K == 0 ? 0 : Math.exp(-referenceLoss_1_s * (1 + path.mismatch()) * h);
    reference_K = reference_K * kept + grid.air_K[k] - next_K;
    if (reference_K != 0) {
      double seen = SeenAir.of(step.armSpeed() - step.carried(), step.draught(k));
      layout.model().loss(step.losses(), seen, reference_K, grid.air[k + 1], out);
      referenceLoss_1_s = out[0];
    }
  }

  private void jacobianRow(ThermocoupleCurve curve, double bead, double air_K, double[] row) {
    double scale = curve.signalByDelta(bead, air_K);
    int begun = step.begun();
    for (int j = 0; j < begun; j++) {
      row[j] = scale * beadBy[j];
    }
    Arrays.fill(row, begun, width, 0);
    row[layout.path(ThermalPath.OFFSET)] += 1;
    row[layout.path(ThermalPath.SLOPE)] += curve.signalBySlope(bead, air_K);
  }

  /** What the last run through says of the ball at the averaged rows. */
  Whitening.Course course() {
    if (!described) {
      described = true;
      ThermalPath path = path();
      for (int k = 0; k < track.grid.time_s.length; k++) {
        if (track.grid.row[k] >= 0) {
          describe(path, k, track.grid.row[k]);
        }
      }
    }
    return course;
  }

  private void describe(ThermalPath path, int k, int row) {
    double delta = deltaAtRow[row];
    seen.at(armAtRow[row] - carriedAtRow[row], step.draught(k));
    double speed = seen.speed_m_s;
    layout.model().loss(step.losses(), speed, delta, track.grid.air[k], out);
    course.moved[row] = armAtRow[row] != 0;
    course.rate_1_s[row] = Math.max(1e-5, (out[0] + out[2] * delta) / (1 - path.heaterShare()));
    double perKelvin = Math.abs(layout.perKelvin());
    course.lossSignal_1_s[row] = out[0] * delta * perKelvin;
    course.bySpeed_1_m[row] = out[1] * delta * perKelvin;
    course.byDraught_1_m[row] = seen.byPast * course.bySpeed_1_m[row];
    course.speed_m_s[row] = speed;
  }
}
