package faintwind.physics.design;

import faintwind.physics.Interval;

/** Sunlight on a ball. */
public final class SunLoad {
  /** Global irradiance of the AM1.5 reference, W/m² (ASTM G173-03, 1000.4, from memory). */
  public static final double FULL_SUN_W_M2 = 1000;

  private SunLoad() {}

  /**
   * Power taken up by a ball, W: α·E·π·D²/4 (its cross-section, beam light).
   *
   * @param solarAbsorptance α, 0 to 1
   * @param irradiance_W_m2 E, W/m²
   * @param diameter_m D, m
   */
  public static Interval absorbed_W(
      Interval solarAbsorptance, double irradiance_W_m2, double diameter_m) {
    return solarAbsorptance.times(irradiance_W_m2 * Math.PI * diameter_m * diameter_m / 4);
  }
}
