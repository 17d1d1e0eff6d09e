package faintwind.calibration.speed.state;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.PreparedRow.Kind;

/** The filter over one log from row to row, with the watch on the heater. For one thread. */
public final class ForwardFilter {
  static final double RESUME_SHARE = 0.2;
  private static final double SETTLED_VARIANCE = 0.01;

  private final FieldFormula formula;
  private final HeaterLimits limits;
  private final HeatState state;
  private final Innovation innovation;
  private final HeaterWatch watch;
  private boolean restarted;
  private boolean settled;
  private int rowsSinceBegin;

  public ForwardFilter(Calibration calibration, FieldFormula formula) {
    this.formula = formula;
    limits = HeaterLimits.of(calibration, formula);
    state = new HeatState(formula);
    innovation = new Innovation(formula);
    watch = new HeaterWatch(limits, formula);
  }

  public void copyFrom(ForwardFilter other) {
    state.copyFrom(other.state);
    watch.copyFrom(other.watch);
    restarted = other.restarted;
    settled = other.settled;
    rowsSinceBegin = other.rowsSinceBegin;
  }

  /**
   * Takes the next row in.
   *
   * @param walk2_1_s variance of the walk of ln(loss), per second
   * @param noise2 variance of a reading, signal unit squared
   * @param jumpVariance room for a sudden change of the loss ratio, by its variance
   */
  public void step(PreparedRow row, double walk2_1_s, double noise2, double jumpVariance) {
    double air_K = row.air().air_K();
    restarted = row.kind() == Kind.FIRST || row.kind() == Kind.AFTER_LONG_GAP;
    if (restarted) {
      begin(row);
      innovation.foresee(state, row.signal(), noise2, air_K);
      return;
    }
    if (jumpVariance > 0) {
      state.leaveRoom(jumpVariance);
    }
    state.advance(row.step_s(), watch.heating_K_s(row), walk2_1_s, row.air());
    innovation.foresee(state, row.signal(), noise2, air_K);
    if (row.kind() == Kind.SPIKE) {
      innovation.ignore();
      return;
    }
    innovation.correct(state);
    double perKelvin = innovation.sensitivity();
    if (watch.look(row, noise2 / (perKelvin * perKelvin), state)) {
      switched(row);
    }
    rowsSinceBegin++;
    settled = settled || state.logVariance() < SETTLED_VARIANCE;
  }

  /** The heater is known to be lost from elsewhere, after this row was taken in. */
  public void heaterLost(PreparedRow row) {
    watch.lost(row);
    switched(row);
  }

  private void begin(PreparedRow row) {
    double read_K = formula.readDelta_K(row);
    boolean warm = read_K > RESUME_SHARE * limits.stillDelta_K();
    double supplied_K_s = row.supplied_K_s();
    state.begin(read_K, warm ? supplied_K_s : 0, formula.path().heating_K_s());
    watch.begin(row);
    settled = false;
    rowsSinceBegin = 0;
  }

  private void switched(PreparedRow row) {
    double read_K = formula.readDelta_K(row);
    boolean bySupply = row.supply() == PreparedRow.Supply.OFF || watch.switchedOn();
    settled = false;
    rowsSinceBegin = 0;
    if (bySupply && read_K > RESUME_SHARE * limits.stillDelta_K()) {
      state.forgetLoss(formula.path().heating_K_s());
      return;
    }
    double flow_K_s = 0;
    state.begin(read_K, flow_K_s, formula.path().heating_K_s());
    restarted = true;
  }

  public HeaterLimits limits() {
    return limits;
  }

  public HeatState state() {
    return state;
  }

  public Innovation innovation() {
    return innovation;
  }

  public boolean heaterIsOff() {
    return watch.isOff();
  }

  /** Whether the last row began anew, so that nothing before it bears on it. */
  public boolean restarted() {
    return restarted;
  }

  /** Rows since the last begin or switch. */
  public int rowsSinceBegin() {
    return rowsSinceBegin;
  }

  /** Whether the loss has been known to a tenth since the last begin. */
  public boolean settled() {
    return settled;
  }
}
