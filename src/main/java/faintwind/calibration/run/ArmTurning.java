package faintwind.calibration.run;

import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param firstClick_s when the first counted click came, on the file's clock, where it was noted
 */
public record ArmTurning(
    Uncertain radius_m,
    double turns,
    Uncertain turnsTime_s,
    double spinStart_s,
    double spinStop_s,
    Optional<Uncertain> swirlShare,
    OptionalDouble firstClick_s) {

  /** The same where nobody noted when the first counted click came. */
  public ArmTurning(
      Uncertain radius_m,
      double turns,
      Uncertain turnsTime_s,
      double spinStart_s,
      double spinStop_s,
      Optional<Uncertain> swirlShare) {
    this(radius_m, turns, turnsTime_s, spinStart_s, spinStop_s, swirlShare, OptionalDouble.empty());
  }

  /**
   * Mean speed of the ball through the room over the counted time, m/s: 2π · radius · turns / time
   * (definition). Where that time reaches into the run-up, the full speed is more.
   */
  public double speed_m_s() {
    return 2 * Math.PI * radius_m.value() * turns / turnsTime_s.value();
  }
}
