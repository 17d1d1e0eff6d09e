package faintwind.physics;

/**
 * Viscosity and thermal conductivity of dry air. Source: E. W. Lemmon, R. T. Jacobsen, Int. J.
 * Thermophys. 25 (2004) 21, doi 10.1023/B:IJOT.0000022327.04529.f3, Tables I–IV; the critical
 * enhancement of the conductivity is left out (below 1e-6 here, not negligible near 133 K and at
 * high density). Valid far beyond 250–400 K at ordinary pressures.
 */
public final class DryAir {
  private static final double CRITICAL_K = 132.6312;
  private static final double CRITICAL_MOL_L = 10.4477;
  private static final double M_G_MOL = 28.9586;
  private static final double EPSILON_K = 103.3; // ε/k
  private static final double SIGMA_NM = 0.360;
  private static final double[] B = {0.431, -0.4623, 0.08406, 0.005341, -0.00331};

  // Residual terms N, t, d, l of Table III (viscosity) and Table IV (conductivity)
  private static final double[][] VISCOSITY = {
    {10.72, 0.2, 1, 0},
    {1.122, 0.05, 4, 0},
    {0.002019, 2.4, 9, 0},
    {-8.876, 0.6, 1, 1},
    {-0.02916, 3.6, 8, 1}
  };
  private static final double[][] CONDUCTIVITY = {
    {8.743, 0.1, 1, 0},
    {14.76, 0.0, 2, 0},
    {-16.62, 0.5, 3, 2},
    {3.793, 2.7, 7, 2},
    {-6.142, 0.3, 7, 2},
    {-0.3778, 1.3, 11, 2}
  };

  private DryAir() {}

  /**
   * Viscosity, Pa·s (eqs. 1–4).
   *
   * @param temperature_K absolute temperature, K
   * @param density_mol_m3 amount of air in a volume, mol/m³; 0 gives the dilute gas
   */
  public static double viscosity_Pa_s(double temperature_K, double density_mol_m3) {
    return 1e-6
        * (dilute_uPa_s(temperature_K) + residual(VISCOSITY, temperature_K, density_mol_m3));
  }

  /**
   * Thermal conductivity, W/(m K) (eqs. 5–7), without the critical enhancement.
   *
   * @param temperature_K absolute temperature, K
   * @param density_mol_m3 amount of air in a volume, mol/m³; 0 gives the dilute gas
   */
  public static double conductivity_W_mK(double temperature_K, double density_mol_m3) {
    double tau = CRITICAL_K / temperature_K;
    double dilute =
        1.308 * dilute_uPa_s(temperature_K)
            + 1.405 * Math.pow(tau, -1.1)
            - 1.036 * Math.pow(tau, -0.3);
    return 1e-3 * (dilute + residual(CONDUCTIVITY, temperature_K, density_mol_m3));
  }

  /**
   * Specific heat at constant pressure and 101325 Pa, J/(kg K). A quadratic of our own through
   * values of E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, doi 10.1063/1.1285884,
   * within 1e-5 from 250 to 350 K; the pressure changes it by less than 0.1 % down to 60 kPa.
   *
   * @param temperature_K absolute temperature, K
   */
  public static double specificHeat_J_kgK(double temperature_K) {
    double x = (temperature_K - 300) / 100;
    return 1006.3737 + x * (3.65392 + x * 4.00871);
  }

  private static double dilute_uPa_s(double temperature_K) {
    double x = Math.log(temperature_K / EPSILON_K);
    double omega = Math.exp(B[0] + x * (B[1] + x * (B[2] + x * (B[3] + x * B[4]))));
    return 0.0266958 * Math.sqrt(M_G_MOL * temperature_K) / (SIGMA_NM * SIGMA_NM * omega);
  }

  private static double residual(double[][] terms, double temperature_K, double density_mol_m3) {
    double tau = CRITICAL_K / temperature_K;
    double delta = density_mol_m3 / 1000 / CRITICAL_MOL_L;
    double sum = 0;
    for (double[] term : terms) {
      double damped = term[3] == 0 ? 1 : Math.exp(-Math.pow(delta, term[3]));
      sum += term[0] * Math.pow(tau, term[1]) * Math.pow(delta, term[2]) * damped;
    }
    return sum;
  }
}
