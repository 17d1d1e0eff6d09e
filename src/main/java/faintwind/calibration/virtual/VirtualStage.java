package faintwind.calibration.virtual;

import faintwind.calibration.run.Direction;

/**
 * One stretch of a session: heater on or off, arm turning at one speed or at rest.
 *
 * @param duration_s how long, s
 * @param heater state of the supply
 * @param speed_m_s speed at the measured radius, 0 at rest
 * @param radius_m measured radius, m; not used at rest
 * @param direction of the arm; not used at rest
 */
public record VirtualStage(
    double duration_s, Heater heater, double speed_m_s, double radius_m, Direction direction) {

  /** State of the heater's supply. */
  public enum Heater {
    ON,
    OFF
  }

  public VirtualStage {
    if (!(duration_s > 0) || !(speed_m_s >= 0) || !(radius_m > 0)) {
      throw new IllegalArgumentException(
          "duration_s = "
              + duration_s
              + ", speed_m_s = "
              + speed_m_s
              + ", radius_m = "
              + radius_m
              + "; allowed above 0, from 0, above 0");
    }
  }

  /** Arm at rest. */
  public static VirtualStage rest(double duration_s, Heater heater) {
    return new VirtualStage(duration_s, heater, 0, 1, Direction.CW);
  }

  /** Arm turning, heater on. */
  public static VirtualStage spin(
      double duration_s, double speed_m_s, double radius_m, Direction direction) {
    return new VirtualStage(duration_s, Heater.ON, speed_m_s, radius_m, direction);
  }
}
