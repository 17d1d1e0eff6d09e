package faintwind.calibration.virtual;

import faintwind.physics.AirState;

/**
 * Air properties of the made-up room, computed here so that the simulation shares no code with what
 * is fitted to it. Valid 230–400 K.
 *
 * @param conductivity_W_mK US Standard Atmosphere 1976, eq. 53
 * @param kinematicViscosity_m2_s dynamic viscosity over density
 * @param viscosity_Pa_s dynamic viscosity by Sutherland's formula with the constants of US Standard
 *     Atmosphere 1976, eq. 51
 * @param prandtl from these and a specific heat of 1006.5 J/(kg K)
 */
record VirtualAir(
    double conductivity_W_mK,
    double kinematicViscosity_m2_s,
    double viscosity_Pa_s,
    double prandtl) {
  private static final double SPECIFIC_HEAT_J_KGK = 1006.5;
  private static final double DRY_AIR_J_KGK = 287.05;
  private static final double VAPOUR_SHARE_LOST = 0.378;

  /** Properties at the room's pressure and vapour, but at the temperature of a film. */
  static VirtualAir at(double temperature_K, AirState room) {
    double t = temperature_K;
    double viscosity = 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
    double conductivity = 2.64638e-3 * t * Math.sqrt(t) / (t + 245.4 * Math.pow(10, -12 / t));
    double vapour_Pa = room.relativeHumidity() * saturation_Pa(room.temperature_K());
    double density = (room.pressure_Pa() - VAPOUR_SHARE_LOST * vapour_Pa) / (DRY_AIR_J_KGK * t);
    return new VirtualAir(
        conductivity,
        viscosity / density,
        viscosity,
        viscosity * SPECIFIC_HEAT_J_KGK / conductivity);
  }

  /** Magnus form of the saturation pressure over water (common practice, no source), Pa. */
  private static double saturation_Pa(double temperature_K) {
    double t_C = temperature_K - 273.15;
    return 611.2 * Math.exp(17.62 * t_C / (243.12 + t_C));
  }
}
