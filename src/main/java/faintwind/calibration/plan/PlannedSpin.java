package faintwind.calibration.plan;

import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;

/**
 * One speed on the arm as planned.
 *
 * @param number counts the spins from 1 in the order turned
 * @param radius_m arm radius, m
 * @param beat the beat to follow
 * @param turns whole turns to count, from the first counted click to the last
 * @param direction seen from above
 * @param u_speed_m_s expected standard uncertainty of the ball's speed from radius and count, m/s
 */
public record PlannedSpin(
    int number, Uncertain radius_m, Beat beat, int turns, Direction direction, double u_speed_m_s) {

  /** Speed of the ball through the room, m/s. */
  public double speed_m_s() {
    return beat.speed_m_s(radius_m.value());
  }

  /** Time that the counted turns take, s. */
  public double turnsTime_s() {
    return turns / beat.turns_1_s();
  }
}
