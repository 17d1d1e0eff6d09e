package faintwind.calibration.speed.state;

import faintwind.calibration.speed.state.PreparedRow.Supply;

/**
 * Whether the heater is on, by the supply where it is recorded and by the heat balance in any case.
 * Off is known by the balance where a cool ball does not rise, or where the loss would have to be
 * greater than any calibrated wind makes it while the difference falls at least as fast as still
 * air lets it; on again, where the difference rises or falls too slowly. For one log and one
 * thread.
 */
final class HeaterWatch {
  /**
   * The loss of still air bends downwards over the difference but for the small part of radiation,
   * so that a tangent lies above it, or below by less than this.
   */
  private static final double STILL_MARGIN = 1.1;

  private final HeaterLimits limits;
  private final FieldFormula formula;
  private boolean off;
  private boolean supplyOff;
  private boolean switchedOn;
  private double anchor_s;
  private double anchorDelta_K;
  private int anchorRows;
  private int impossibleRows;
  private double impossible_s;

  HeaterWatch(HeaterLimits limits, FieldFormula formula) {
    this.limits = limits;
    this.formula = formula;
  }

  void copyFrom(HeaterWatch other) {
    off = other.off;
    supplyOff = other.supplyOff;
    switchedOn = other.switchedOn;
    anchor_s = other.anchor_s;
    anchorDelta_K = other.anchorDelta_K;
    anchorRows = other.anchorRows;
    impossibleRows = other.impossibleRows;
    impossible_s = other.impossible_s;
  }

  /** Whether the heater is taken to be off, whoever says so. */
  boolean isOff() {
    return off || supplyOff;
  }

  /** Whether the last look found it switched, so that what was known of the loss is void. */
  boolean switchedOn() {
    return switchedOn;
  }

  /** The heater is known to be lost from elsewhere. */
  void lost(PreparedRow row) {
    off = true;
    switchedOn = false;
    anchor(row);
  }

  /** Heating rate to reckon with for the step to a row, K/s. */
  double heating_K_s(PreparedRow row) {
    return off ? 0 : row.supplied_K_s();
  }

  void begin(PreparedRow row) {
    off = false;
    supplyOff = row.supply() == Supply.OFF;
    impossible_s = 0;
    impossibleRows = 0;
    anchor(row);
  }

  /**
   * Looks at a row after the filter has taken it in.
   *
   * @param noise2 variance of a reading over the square of the signal per kelvin, K²
   * @param state the filter's state
   * @return whether the belief has changed
   */
  boolean look(PreparedRow row, double noise2, HeatState state) {
    boolean wasOff = isOff();
    supplyOff = row.supply() == Supply.OFF;
    anchorRows++;
    if (supplyOff) {
      off = false;
      anchor(row);
    } else if (off) {
      lookForOn(row, Math.sqrt(noise2), state);
    } else {
      lookForOff(row, state);
    }
    switchedOn = wasOff && !isOff();
    return wasOff != isOff();
  }

  private void lookForOn(PreparedRow row, double noise_K, HeatState state) {
    double read_K = formula.readDelta_K(row);
    double age_s = row.time_s() - anchor_s;
    double rise_K = read_K - anchorDelta_K;
    boolean rises =
        anchorRows >= 2
            && rise_K > OwnChoices.RISE_NOISES * noise_K
            && rise_K > OwnChoices.CLEAR_RISE * row.supplied_K_s() * age_s;
    boolean fallsTooSlowly =
        state.ratio() < OwnChoices.TOO_SLOW_RATIO
            && state.logVariance() < OwnChoices.SURE_VARIANCE
            && read_K > OwnChoices.COOL_SHARE * limits.stillDelta_K();
    if (rises || fallsTooSlowly) {
      off = false;
      anchor(row);
    } else if (age_s > OwnChoices.ON_WINDOW_S && anchorRows >= 3) {
      anchor(row);
    }
  }

  private void lookForOff(PreparedRow row, HeatState state) {
    double age_s = row.time_s() - anchor_s;
    if (age_s > OwnChoices.OFF_WINDOW_S && anchorRows >= 3) {
      double cool_K = OwnChoices.COOL_SHARE * limits.stillDelta_K();
      double read_K = formula.readDelta_K(row);
      boolean cool = read_K < cool_K && anchorDelta_K < cool_K;
      boolean flat = read_K - anchorDelta_K < OwnChoices.SLOW_RISE * row.supplied_K_s() * age_s;
      off = cool && flat;
      anchor(row);
    }
    boolean impossible =
        STILL_MARGIN * state.stillNearby_1_s() * state.ratio() > limits.greatestLoss_1_s()
            && isImpossible(row, state);
    impossibleRows += impossible ? 1 : -1;
    impossible_s += impossible ? row.step_s() : -row.step_s();
    if (impossibleRows <= 0 || impossible_s <= 0) {
      impossibleRows = 0;
      impossible_s = 0;
    }
    off |= impossible_s > OwnChoices.IMPOSSIBLE_S && impossibleRows >= OwnChoices.IMPOSSIBLE_ROWS;
  }

  private boolean isImpossible(PreparedRow row, HeatState state) {
    double delta = state.delta_K();
    double still_1_s = formula.stillLoss_1_s(delta, row.air());
    double loss = still_1_s * state.ratio();
    return loss > limits.greatestLoss_1_s()
        && state.logVariance() < OwnChoices.SURE_VARIANCE
        && loss - state.flow_K_s() / Math.max(delta, 1e-3) > OwnChoices.UNHEATED_FALL * still_1_s;
  }

  private void anchor(PreparedRow row) {
    anchor_s = row.time_s();
    anchorDelta_K = formula.readDelta_K(row);
    anchorRows = 0;
  }
}
