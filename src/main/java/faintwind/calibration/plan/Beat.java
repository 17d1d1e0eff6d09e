package faintwind.calibration.plan;

/**
 * The beat that the arm follows.
 *
 * @param perMinute beats a minute, a whole number
 * @param aTurn beats a turn
 */
public record Beat(int perMinute, int aTurn) {
  public Beat {
    if (perMinute < 1 || aTurn < 1) {
      throw new IllegalArgumentException(
          "perMinute = " + perMinute + ", aTurn = " + aTurn + ", allowed from 1");
    }
  }

  /** Turns a second. */
  public double turns_1_s() {
    return perMinute / 60.0 / aTurn;
  }

  /** Time between two beats, s. */
  public double period_s() {
    return 60.0 / perMinute;
  }

  /** Speed at a radius, m/s: 2π · radius · turns a second (definition). */
  public double speed_m_s(double radius_m) {
    return 2 * Math.PI * radius_m * turns_1_s();
  }
}
