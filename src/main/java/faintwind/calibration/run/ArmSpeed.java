package faintwind.calibration.run;

/**
 * Speed of the ball through the room from radius, turns and time: v = 2π R N / t (definition), with
 * its standard uncertainty u(v)/v = √((u(R)/R)² + (u(t)/t)²) (JCGM 100:2008, 5.1.6). Where an
 * uncertainty was not stated, 2 mm and 0.5 s stand in (common practice, no source).
 */
public final class ArmSpeed {
  /** Standard uncertainty of a radius where none was stated, m. */
  public static final double RADIUS_U_M = 0.002;

  /** Standard uncertainty of the time between two clicks where none was stated, s. */
  public static final double CLICKS_U_S = 0.5;

  private ArmSpeed() {}

  /** The speed with its standard uncertainty, m/s. */
  public static Uncertain of(ArmTurning arm) {
    double speed = arm.speed_m_s();
    return Uncertain.of(speed, speed * Math.hypot(uRadius(arm), uClicks(arm)));
  }

  /** Relative standard uncertainty of the radius; common to all runs on the same radius. */
  public static double uRadius(ArmTurning arm) {
    return arm.radius_m().u().orElse(RADIUS_U_M) / arm.radius_m().value();
  }

  /** Relative standard uncertainty of the time between the clicks; each run's own. */
  public static double uClicks(ArmTurning arm) {
    return arm.turnsTime_s().u().orElse(CLICKS_U_S) / arm.turnsTime_s().value();
  }
}
