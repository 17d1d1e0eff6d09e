package faintwind.calibration;

import java.util.Optional;

/**
 * What the runs covered.
 *
 * @param lowest_m_s lowest speed of a run
 * @param highest_m_s highest speed of a run
 * @param lowestSignal smallest signal of a heated run, offset taken off
 * @param highestSignal largest signal of a heated run, offset taken off
 * @param carriedAirShown whether the recordings, or a stated share, show the carried air
 * @param arm what they showed of the arm; empty where none was turned
 */
public record Coverage(
    double lowest_m_s,
    double highest_m_s,
    double lowestSignal,
    double highestSignal,
    boolean carriedAirShown,
    Optional<ArmShown> arm) {
  private static final double ROUNDING = 1e-3;

  /** Whether a speed lies beyond the calibrated ones. */
  public boolean isBeyond(double speed_m_s) {
    return speed_m_s < lowest_m_s * (1 - ROUNDING) || speed_m_s > highest_m_s * (1 + ROUNDING);
  }
}
