package faintwind.calibration.virtual;

import faintwind.physics.AirState;

/**
 * The made-up room.
 *
 * @param air its air at the start
 * @param drift_K_h steady drift of its temperature, K per hour
 * @param wander_K standard deviation of a slow wander of its temperature, K
 * @param draught_m_s standard deviation of each horizontal component of a slow draught, m/s
 */
public record VirtualRoom(AirState air, double drift_K_h, double wander_K, double draught_m_s) {

  /** The same air, perfectly steady. */
  VirtualRoom steady() {
    return new VirtualRoom(air, 0, 0, 0);
  }
}
