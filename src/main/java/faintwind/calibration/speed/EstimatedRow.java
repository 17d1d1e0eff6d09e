package faintwind.calibration.speed;

import faintwind.calibration.speed.state.PreparedRow;

/**
 * What the estimator knows at one row, before averaging.
 *
 * @param row the row
 * @param estimate the state there
 * @param speed_m_s speed that belongs to it
 * @param flags known so far, by their {@link SpeedFlag#bit}
 * @param place where it lies among sudden changes of the wind
 */
record EstimatedRow(PreparedRow row, Estimate estimate, double speed_m_s, int flags, Place place) {

  /**
   * State at a row.
   *
   * @param delta_K difference
   * @param stillLoss_1_s loss of still air at that difference
   * @param logLoss ln(loss / loss of still air)
   * @param variance of {@code logLoss}, from the estimator alone
   * @param memory_s time over which its error stays the same ({@link
   *     faintwind.calibration.speed.state.ErrorMemory})
   * @param heatingShare heat put in over heat lost, 1 at rest
   * @param hidden relative uncertainty of the difference by the logger's step
   */
  record Estimate(
      double delta_K,
      double stillLoss_1_s,
      double logLoss,
      double variance,
      double memory_s,
      double heatingShare,
      double hidden) {}

  /**
   * Where a row lies among sudden changes of the wind.
   *
   * @param segment rows of different ones lie on two sides of a change
   * @param withinChange whether it belongs to neither side
   */
  record Place(int segment, boolean withinChange) {}

  /** Whether the speed may enter the average of its neighbours. */
  boolean averages() {
    return (flags & (SpeedFlag.WARMUP.bit() | SpeedFlag.POWER.bit())) == 0;
  }
}
