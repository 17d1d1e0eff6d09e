package faintwind.calibration.response;

import faintwind.calibration.FormulaFit;
import faintwind.calibration.run.SignalPath;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Every number besides the fitted parameters that the formulas of {@link Relations} name, with its
 * unit.
 */
public final class FormulaConstants {
  private FormulaConstants() {}

  /**
   * A number of the formulas.
   *
   * @param unit its unit, 1 for none
   */
  public record Constant(double value, String unit) {}

  /** The constants of a fitted formula, by name. */
  public static Map<String, Constant> of(FormulaFit fit, SignalPath signal) {
    Map<String, Constant> all = new LinkedHashMap<>();
    double reference_K = fit.referenceAir().temperature_K();
    AirPoint air = AirPoint.of(fit.referenceAir());
    all.put("ball_diameter_m", new Constant(fit.diameter_m(), "m"));
    all.put("reference_K", new Constant(reference_K, "K"));
    all.put("reference_nu", new Constant(air.viscosity(reference_K), "m^2/s"));
    all.put("signal_per_K", new Constant(signal.perKelvin(), signal.unit().symbol() + "/K"));
    all.put("sensitivity_bend", new Constant(bend(signal, reference_K), "1/K^2"));
    all.put("nominal_supply_V", new Constant(signal.supply_V().orElse(1), "V"));
    air(all);
    all.put("gravity", new Constant(PhysicsShaped.GRAVITY, "m/s^2"));
    all.put("prandtl", new Constant(PhysicsShaped.PRANDTL, "1"));
    all.put("re_pivot", new Constant(PhysicsShaped.RE_PIVOT, "1"));
    all.put("least_delta_K", new Constant(PhysicsShaped.LEAST_DELTA_K, "K"));
    return all;
  }

  private static void air(Map<String, Constant> all) {
    all.put("zero_celsius_K", new Constant(AirPoint.ZERO_C_K, "K"));
    all.put("saturation_0_Pa", new Constant(AirPoint.SATURATION_0_PA, "Pa"));
    all.put("saturation_factor", new Constant(AirPoint.SATURATION_FACTOR, "1"));
    all.put("saturation_C", new Constant(AirPoint.SATURATION_C, "C"));
    all.put("gas_constant_dry", new Constant(AirPoint.R_DRY, "J/(kg K)"));
    all.put("vapour_deficit", new Constant(AirPoint.VAPOUR_DEFICIT, "1"));
    all.put("viscosity_300", new Constant(AirPoint.MU_300, "Pa s"));
    all.put("nu_exponent", new Constant(AirPoint.NU_EXPONENT, "1"));
    all.put("k_exponent", new Constant(AirPoint.K_EXPONENT, "1"));
  }

  private static double bend(SignalPath signal, double reference_K) {
    return signal
        .thermocouple()
        .flatMap(TypeLetter::of)
        .map(type -> type.bendAt(reference_K))
        .orElse(0.0);
  }
}
