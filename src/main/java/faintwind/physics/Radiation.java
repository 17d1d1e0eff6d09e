package faintwind.physics;

/**
 * Radiation between a small grey ball and large surroundings at the air's temperature: q = ε·σ·(T⁴
 * − T_s⁴) (Stefan–Boltzmann; surroundings taken as black and far).
 */
public final class Radiation {
  private Radiation() {}

  /** Heat flux, W/m², from a surface of emissivity ε at one temperature to surroundings, both K. */
  public static double flux_W_m2(double emissivity, double surface_K, double surroundings_K) {
    double s2 = surface_K * surface_K;
    double a2 = surroundings_K * surroundings_K;
    return emissivity * Constants.STEFAN_BOLTZMANN_W_M2K4 * (s2 - a2) * (s2 + a2);
  }

  /** Coefficient for small differences, 4·ε·σ·T³, W/(m² K). */
  public static double coefficient_W_m2K(double emissivity, double temperature_K) {
    return 4 * emissivity * Constants.STEFAN_BOLTZMANN_W_M2K4 * Math.pow(temperature_K, 3);
  }
}
