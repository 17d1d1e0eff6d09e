package faintwind.physics;

/**
 * Dilute water vapour, only for its share in moist air. Sources, from memory: IAPWS R12-08
 * (viscosity, 2008) eq. 11 and R15-11 (conductivity, 2011) eq. 16; both zero-density parts.
 */
final class WaterVapour {
  private static final double CRITICAL_K = 647.096;
  private static final double[] H = {1.67752, 2.20462, 0.6366564, -0.241605};
  private static final double[] L = {
    2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4
  };
  static final double SPECIFIC_HEAT_J_KGK = 1864; // near 300 K, handbook value, from memory
  private static final double MASS_RATIO = 28.96546 / 18.01528;

  private WaterVapour() {}

  static double viscosity_Pa_s(double temperature_K) {
    double x = temperature_K / CRITICAL_K;
    return 1e-4 * Math.sqrt(x) / series(H, x);
  }

  static double conductivity_W_mK(double temperature_K) {
    double x = temperature_K / CRITICAL_K;
    return 1e-3 * Math.sqrt(x) / series(L, x);
  }

  /**
   * A property of the mixture by Wilke's rule (J. Chem. Phys. 18 (1950) 517), also used for the
   * conductivity with the same φ (Mason and Saxena 1958): Σ x_i η_i / Σ x_j φ_ij. In moist room air
   * it moves either property by less than 1 %.
   *
   * @param dry the property of dry air
   * @param vapour the property of water vapour
   * @param x mole fraction of vapour
   * @param viscosityRatio viscosity of dry air over that of vapour
   */
  static double mixed(double dry, double vapour, double x, double viscosityRatio) {
    double dryOnVapour = phi(viscosityRatio, MASS_RATIO);
    double vapourOnDry = phi(1 / viscosityRatio, 1 / MASS_RATIO);
    return (1 - x) * dry / (1 - x + x * dryOnVapour) + x * vapour / (x + (1 - x) * vapourOnDry);
  }

  private static double phi(double viscosityRatio, double massRatio) {
    double root = 1 + Math.sqrt(viscosityRatio) * Math.pow(massRatio, -0.25);
    return root * root / Math.sqrt(8 * (1 + massRatio));
  }

  private static double series(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum / x + coefficients[i];
    }
    return sum;
  }
}
