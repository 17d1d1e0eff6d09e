package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;

/**
 * A row whose time and signal could be read, made ready for the estimator.
 *
 * @param time_s time on the log's clock, s
 * @param step_s time since the last such row, 0 for the first
 * @param signal in the calibration's unit
 * @param rowAir the air's state, smoothed
 * @param supplied_K_s heating rate that the supply speaks for, K/s
 * @param supply what the supply column says
 * @param kind how the row follows the one before
 */
public record PreparedRow(
    double time_s,
    double step_s,
    double signal,
    RowAir rowAir,
    double supplied_K_s,
    Supply supply,
    Kind kind) {

  public AirPoint air() {
    return rowAir.point();
  }

  /**
   * The air at a row.
   *
   * @param point its state
   * @param u_temperature_K standard uncertainty of its temperature: 0 where it was recorded or
   *     given
   * @param u_pressure relative standard uncertainty of its pressure, likewise
   */
  public record RowAir(AirPoint point, double u_temperature_K, double u_pressure) {}

  /** What the supply column says. */
  public enum Supply {
    NOT_RECORDED,
    GOOD,
    /** On, but further from the calibration's supply than tolerated. */
    OUT,
    OFF
  }

  /** How a row follows the one before. */
  public enum Kind {
    FIRST,
    USUAL,
    /** A break in the record just before. */
    AFTER_GAP,
    /** A break so long that nothing of the state is left. */
    AFTER_LONG_GAP,
    /** A jump that no ball can make: the row is read, but the state does not follow it. */
    SPIKE
  }
}
