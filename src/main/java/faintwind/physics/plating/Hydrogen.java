package faintwind.physics.plating;

import faintwind.physics.Constants;

/** Hydrogen given off at the cathode by the charge that deposits no metal: n = (1 − η)·Q/(2·F). */
public final class Hydrogen {
  /** Lower flammable limit in air, share of the volume (ISO 10156, IEC 60079-20-1). */
  public static final double FLAMMABLE_SHARE = 0.04;

  /** Share of the flammable limit that is not to be passed: the usual alarm level, no source. */
  public static final double ALARM_OF_LIMIT = 0.25;

  private Hydrogen() {}

  /**
   * Its volume as an ideal gas, m³.
   *
   * @param charge_C charge passed, C
   * @param efficiency share of the charge that deposits metal; 0 is the worst case
   * @param temperature_K room temperature, K
   * @param pressure_Pa room pressure, Pa
   */
  public static double volume_m3(
      double charge_C, double efficiency, double temperature_K, double pressure_Pa) {
    double mol = (1 - efficiency) * charge_C / (2 * Constants.FARADAY_C_MOL);
    return mol * Constants.GAS_J_MOLK * temperature_K / pressure_Pa;
  }
}
