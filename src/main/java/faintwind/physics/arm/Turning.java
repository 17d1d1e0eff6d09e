package faintwind.physics.arm;

/**
 * A point that goes round at an even speed (kinematics of uniform circular motion, any textbook of
 * mechanics).
 *
 * @param radius_m from the axis to the point, m
 * @param speed_m_s along its circle, m/s
 */
public record Turning(double radius_m, double speed_m_s) {

  public Turning {
    if (!(radius_m > 0 && speed_m_s >= 0)) {
      throw new IllegalArgumentException(
          "radius " + radius_m + " m above 0, speed " + speed_m_s + " m/s 0 or more");
    }
  }

  /** ω = v/r, rad/s. */
  public double omega_rad_s() {
    return speed_m_s / radius_m;
  }

  /** Turns in a second: v/(2π·r). */
  public double turns_1_s() {
    return speed_m_s / (2 * Math.PI * radius_m);
  }

  /** Towards the axis: v²/r, m/s². */
  public double acceleration_m_s2() {
    return speed_m_s * speed_m_s / radius_m;
  }

  /**
   * What holds a mass on its circle, N: m·v²/r.
   *
   * @param mass_kg at the point
   */
  public double pull_N(double mass_kg) {
    return mass_kg * acceleration_m_s2();
  }
}
