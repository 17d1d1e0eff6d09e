package faintwind.physics;

import java.util.ArrayList;

/**
 * Density of moist air, CIPM-2007: ρ = p·Ma/(Z·R·T)·[1 − x_v(1 − Mv/Ma)]. Source: A. Picard, R. S.
 * Davis, M. Gläser, K. Fujii, Metrologia 45 (2008) 149, doi 10.1088/0026-1394/45/2/004, with R =
 * 8.314472 J/(mol K) and 400 µmol/mol carbon dioxide. Published for 15–27 °C and 600–1100 hPa;
 * outside it is extrapolated (against the dry-air equation of Lemmon 2000: 2e-5 from 250 to 330 K)
 * and {@link #density_kg_m3(AirState)} says so.
 */
public final class MoistAir {
  private static final double R = 8.314472; // as the equation was published
  private static final double M_A = 28.96546e-3; // kg/mol, dry air at 400 µmol/mol CO2
  private static final double M_V = 18.01528e-3; // kg/mol, water
  private static final String CIPM = "range.cipm-2007";

  private MoistAir() {}

  /** Saturation vapour pressure over water, Pa, at an absolute temperature, K (eq. A1.1). */
  public static double saturationPressure_Pa(double temperature_K) {
    double t = temperature_K;
    return Math.exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6.3431645e3 / t);
  }

  /** Enhancement factor f(p, t) (eq. A1.2), dimensionless. */
  static double enhancement(AirState air) {
    double t = air.temperature_K() - Constants.ZERO_C_K;
    return 1.00062 + 3.14e-8 * air.pressure_Pa() + 5.6e-7 * t * t;
  }

  /** Mole fraction of water vapour, x_v = h·f·p_sv/p, at most 1. */
  public static double vapourFraction(AirState air) {
    double saturation = saturationPressure_Pa(air.temperature_K());
    double x = air.relativeHumidity() * enhancement(air) * saturation / air.pressure_Pa();
    return Math.min(1, x);
  }

  /** Compressibility factor Z (eq. A1.4), dimensionless. */
  public static double compressibility(AirState air) {
    double t = air.temperature_K() - Constants.ZERO_C_K;
    double x = vapourFraction(air);
    double pT = air.pressure_Pa() / air.temperature_K();
    double first =
        1.58123e-6 // a0
            - 2.9331e-8 * t // a1
            + 1.1043e-10 * t * t // a2
            + (5.707e-6 - 2.051e-8 * t) * x // b0, b1
            + (1.9898e-4 - 2.376e-6 * t) * x * x; // c0, c1
    return 1 - pT * first + pT * pT * (1.83e-11 - 0.765e-8 * x * x); // d, e
  }

  /** Density, kg/m³; says when 15–27 °C or 600–1100 hPa is left. */
  public static Ranged density_kg_m3(AirState air) {
    var left = new ArrayList<Ranged.RangeLeft>();
    double t = air.temperature_K() - Constants.ZERO_C_K;
    left.addAll(Ranged.check(CIPM, "t / °C", t, 15, 27));
    left.addAll(Ranged.check(CIPM, "p / hPa", air.pressure_Pa() / 100, 600, 1100));
    return new Ranged(density(air), left);
  }

  /** Amount of air in a volume, mol/m³: p/(Z·R·T). */
  static double molarDensity_mol_m3(AirState air) {
    return air.pressure_Pa() / (compressibility(air) * R * air.temperature_K());
  }

  static double density(AirState air) {
    return molarDensity_mol_m3(air) * molarMass_kg_mol(vapourFraction(air));
  }

  /** Molar mass of air with a mole fraction x of vapour, kg/mol. */
  static double molarMass_kg_mol(double x) {
    return M_A * (1 - x * (1 - M_V / M_A));
  }

  /** Mass fraction of vapour for its mole fraction x. */
  static double vapourMassFraction(double x) {
    return x * M_V / molarMass_kg_mol(x);
  }
}
