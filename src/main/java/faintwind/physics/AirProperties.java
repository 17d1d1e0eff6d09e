package faintwind.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Properties of air at one state: density by {@link MoistAir} (CIPM-2007), viscosity and
 * conductivity by {@link DryAir} (Lemmon and Jacobsen 2004) with the vapour's share by {@link
 * WaterVapour}. Meant for 250–330 K, 60–110 kPa, 0–100 % humidity; for many evaluations at one
 * pressure take {@link FilmAir}.
 *
 * @param density_kg_m3 density ρ, kg/m³
 * @param viscosity_Pa_s dynamic viscosity µ, Pa·s
 * @param conductivity_W_mK thermal conductivity k, W/(m K)
 * @param specificHeat_J_kgK specific heat at constant pressure, J/(kg K)
 */
public record AirProperties(
    double density_kg_m3,
    double viscosity_Pa_s,
    double conductivity_W_mK,
    double specificHeat_J_kgK) {

  /** The properties at a state. */
  public static AirProperties of(AirState air) {
    double t = air.temperature_K();
    double x = MoistAir.vapourFraction(air);
    double molar = MoistAir.molarDensity_mol_m3(air);
    double dryViscosity = DryAir.viscosity_Pa_s(t, molar);
    double dryConductivity = DryAir.conductivity_W_mK(t, molar);
    double density = MoistAir.density(air);
    double dryHeat = DryAir.specificHeat_J_kgK(t);
    if (x == 0) {
      return new AirProperties(density, dryViscosity, dryConductivity, dryHeat);
    }
    double vapourViscosity = WaterVapour.viscosity_Pa_s(t);
    double ratio = dryViscosity / vapourViscosity;
    double w = MoistAir.vapourMassFraction(x);
    return new AirProperties(
        density,
        WaterVapour.mixed(dryViscosity, vapourViscosity, x, ratio),
        WaterVapour.mixed(dryConductivity, WaterVapour.conductivity_W_mK(t), x, ratio),
        (1 - w) * dryHeat + w * WaterVapour.SPECIFIC_HEAT_J_KGK);
  }

  /** The range of these properties, 250–330 K and 60–110 kPa, where a state leaves it. */
  public static List<Ranged.RangeLeft> left(AirState air) {
    return left(air.temperature_K(), air.pressure_Pa());
  }

  static List<Ranged.RangeLeft> left(double temperature_K, double pressure_Pa) {
    List<Ranged.RangeLeft> left = new ArrayList<>();
    left.addAll(Ranged.check("range.air", "T / K", temperature_K, 250, 330));
    left.addAll(Ranged.check("range.air", "p / kPa", pressure_Pa / 1000, 60, 110));
    return left;
  }

  /** Kinematic viscosity ν = µ/ρ, m²/s. */
  public double kinematicViscosity_m2_s() {
    return viscosity_Pa_s / density_kg_m3;
  }

  /** Prandtl number µ·c/k, dimensionless. */
  public double prandtl() {
    return viscosity_Pa_s * specificHeat_J_kgK / conductivity_W_mK;
  }
}
