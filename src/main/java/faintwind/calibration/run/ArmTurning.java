package faintwind.calibration.run;

import java.util.Optional;

/**
 * How the arm was turned in one run.
 *
 * @param radius_m arm radius to the ball's centre, m
 * @param turns whole turns from the first counted click to the last
 * @param turnsTime_s the time between those two clicks, s
 * @param spinStart_s start of the turning on the file's clock, s
 * @param spinStop_s end of the turning on the file's clock, s
 * @param swirlShare share of the arm's speed at which the air is carried round, where it was
 *     measured, 0 to 1
 */
public record ArmTurning(
    Uncertain radius_m,
    double turns,
    Uncertain turnsTime_s,
    double spinStart_s,
    double spinStop_s,
    Optional<Uncertain> swirlShare) {

  /** Speed of the ball through the room, m/s: 2π · radius · turns / time (definition). */
  public double speed_m_s() {
    return 2 * Math.PI * radius_m.value() * turns / turnsTime_s.value();
  }
}
