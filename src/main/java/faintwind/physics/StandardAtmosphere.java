package faintwind.physics;

/** Pressure and temperature of the standard atmosphere at an altitude. */
public final class StandardAtmosphere {
  private StandardAtmosphere() {}

  /**
   * Pressure, Pa: p = 101325·(1 − 2.25577e-5·z)^5.2559. Source: ASHRAE Handbook Fundamentals,
   * chapter 1 (psychrometrics), −5000 to 11000 m.
   *
   * @param altitude_m altitude above sea level, m
   * @throws IllegalArgumentException outside −5000 to 11000 m
   */
  public static double pressure_Pa(double altitude_m) {
    require(altitude_m);
    return Constants.ATMOSPHERE_PA * Math.pow(1 - 2.25577e-5 * altitude_m, 5.2559);
  }

  private static void require(double altitude_m) {
    if (!(altitude_m >= -5000 && altitude_m <= 11_000)) {
      throw new IllegalArgumentException("altitude_m = " + altitude_m + ", allowed -5000 to 11000");
    }
  }
}
