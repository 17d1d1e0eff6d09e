package faintwind.calibration.response;

import static faintwind.calibration.response.Relation.improving;
import static faintwind.calibration.response.Relation.plain;

import faintwind.calibration.response.Empirical.Form;
import java.util.ArrayList;
import java.util.List;

/**
 * The formulas of a {@link Formula}, typed out: from a signal to the air speed, from a speed to the
 * loss, and the state that a filter follows. Names are those of the parameters and of {@link
 * FormulaConstants}; inputs are {@code signal}, {@code rate} (its change per second), {@code
 * air_C}, {@code pressure_hPa}, {@code rh_pct} and {@code supply_V}. The sources stand with {@link
 * PhysicsShaped}, {@link Empirical}, {@link AirPoint}, {@link ThermalPath} and {@link
 * ThermocoupleCurve}.
 */
public final class Relations {
  private static final String SENSITIVITY =
      "signal_per_K*(1 + sensitivity_slope*(warmer_K + bead_K)"
          + " + sensitivity_bend*(warmer_K + bead_K)^2)";
  private static final String CURVE =
      "signal_per_K*bead_K*(1 + sensitivity_slope*warmer_K + sensitivity_bend*warmer_K^2"
          + " + bead_K*(sensitivity_slope/2 + sensitivity_bend*warmer_K)"
          + " + bead_K^2*sensitivity_bend/3)";
  private static final String SHAPE = "(0.4*exp(ln_re/2) + 0.06*exp(2*ln_re/3))";

  private Relations() {}

  /** From signal, rate, air and supply to the speed, where the change is slow. */
  public static List<Relation> speed(String model) {
    List<Relation> all = new ArrayList<>(air());
    all.add(plain("warmer_K", "K", "air_K - reference_K"));
    all.add(
        improving(
            "bead_K",
            "K",
            "(signal - offset)/signal_per_K",
            "bead_K - (" + CURVE + " - (signal - offset))/(" + SENSITIVITY + ")"));
    all.add(plain("bead_rate_K_s", "K/s", "rate/(" + SENSITIVITY + ")"));
    all.add(plain("delta_K", "K", "bead_K + bead_time*bead_rate_K_s"));
    all.add(plain("heating_K_s", "K/s", "heating*(supply_V/nominal_supply_V)^2"));
    all.add(plain("loss_1_s", "1/s", "(heating_K_s - bead_rate_K_s)/delta_K"));
    all.addAll(
        model.equals(PhysicsShaped.ID) ? shapedSpeed() : empiricalSpeed(Empirical.Form.of(model)));
    return all;
  }

  /** From a speed, a difference and the air to the loss. */
  public static List<Relation> loss(String model) {
    List<Relation> all = new ArrayList<>(air());
    all.addAll(
        model.equals(PhysicsShaped.ID) ? shapedLoss() : empiricalLoss(Empirical.Form.of(model)));
    return all;
  }

  /**
   * What changes in a second: the difference, the heat flow out of the resistor, the bead; and the
   * signal.
   */
  public static List<Relation> state() {
    return List.of(
        plain("delta_rate_K_s", "K/s", "(flow_K_s - loss_1_s*delta_K)/(1 - heater_share)"),
        plain(
            "flow_rate_K_s2",
            "K/s^2",
            "(heating_K_s - flow_K_s)/heater_time - heater_share/heater_time*delta_rate_K_s"),
        plain("bead_rate_K_s", "K/s", "(delta_K - bead_K)/bead_time"),
        plain("signal", "signal unit", "offset + " + CURVE));
  }

  private static List<Relation> air() {
    return List.of(
        plain("air_K", "K", "air_C + zero_celsius_K"),
        plain(
            "vapour_Pa",
            "Pa",
            "rh_pct/100*saturation_0_Pa*exp(saturation_factor*air_C/(air_C + saturation_C))"),
        plain(
            "density_300",
            "kg/m^3",
            "100*pressure_hPa/(gas_constant_dry*300)"
                + "*(1 - vapour_deficit*vapour_Pa/(100*pressure_hPa))"),
        plain("nu_300", "m^2/s", "viscosity_300/density_300"),
        plain("nu_air", "m^2/s", "nu_300*(air_K/300)^nu_exponent"));
  }

  private static List<Relation> film() {
    return List.of(
        plain("film_K", "K", "air_K + delta_K/2"),
        plain("nu_film", "m^2/s", "nu_300*(film_K/300)^nu_exponent"),
        plain("k_ratio", "1", "(film_K/reference_K)^k_exponent"),
        plain(
            "grashof",
            "1",
            "gravity*max(delta_K, least_delta_K)*ball_diameter_m^3/(film_K*nu_film^2)"),
        plain(
            "natural_part",
            "1",
            "natural*0.589*(grashof*prandtl)^0.25/(1 + (0.469/prandtl)^(9/16))^(4/9)"),
        plain("radiation_1_s", "1/s", "radiation*(film_K/reference_K)^3"));
  }

  private static List<Relation> shapedSpeed() {
    List<Relation> all = new ArrayList<>(film());
    all.add(
        plain(
            "mixed_part",
            "1",
            "max(2*((loss_1_s - leads - radiation_1_s)/(conduction*k_ratio) - 1), 0)"));
    all.add(
        plain("forced_part", "1", "max(mixed_part^mixing - natural_part^mixing, 0)^(1/mixing)"));
    all.add(
        plain("shape", "1", "max(forced_part, 1e-9)/(forced*prandtl^0.4)*(film_K/air_K)^warmth"));
    all.add(
        improving(
            "ln_re",
            "1",
            "2*ln(shape/0.5)",
            "ln_re - (ln"
                + SHAPE
                + " + tilt*(ln_re - ln(re_pivot)) - ln(shape))/((0.2*exp(ln_re/2)"
                + " + 0.04*exp(2*ln_re/3))/"
                + SHAPE
                + " + tilt)"));
    all.add(plain("speed_m_s", "m/s", "exp(ln_re)*nu_air/ball_diameter_m"));
    return all;
  }

  private static List<Relation> shapedLoss() {
    List<Relation> all = new ArrayList<>(film());
    all.add(plain("re", "1", "speed_m_s*ball_diameter_m/nu_air"));
    all.add(
        plain(
            "forced_part",
            "1",
            "forced*(0.4*re^0.5 + 0.06*re^(2/3))*prandtl^0.4*(max(re, 1e-30)/re_pivot)^tilt"
                + "*(air_K/film_K)^warmth"));
    all.add(plain("mixed_part", "1", "(forced_part^mixing + natural_part^mixing)^(1/mixing)"));
    all.add(
        plain("loss_1_s", "1/s", "conduction*k_ratio*(1 + mixed_part/2) + leads + radiation_1_s"));
    return all;
  }

  private static List<Relation> ratios(Form form) {
    List<Relation> all = new ArrayList<>();
    all.add(plain("k_ratio", "1", "(air_K/reference_K)^k_exponent"));
    all.add(plain("nu_ratio", "1", "nu_air/reference_nu"));
    all.add(plain("still_1_s", "1/s", "a*k_ratio" + (linear(form) ? "*(1 + r*delta_K)" : "")));
    if (mixes(form)) {
      all.add(
          plain(
              "natural_part",
              "1/s",
              "c*k_ratio*(reference_K/air_K/nu_ratio^2*max(delta_K, least_delta_K))^0.25"));
    }
    return all;
  }

  private static List<Relation> empiricalSpeed(Form form) {
    List<Relation> all = new ArrayList<>(ratios(form));
    all.add(plain("mixed_part", "1/s", "max(loss_1_s - still_1_s, 0)"));
    all.add(
        plain(
            "forced_part",
            "1/s",
            mixes(form) ? "max(mixed_part^m - natural_part^m, 0)^(1/m)" : "mixed_part"));
    all.add(
        plain("speed_m_s", "m/s", "(forced_part/(b*k_ratio))^(1/" + power(form) + ")*nu_ratio"));
    return all;
  }

  private static List<Relation> empiricalLoss(Form form) {
    List<Relation> all = new ArrayList<>(ratios(form));
    all.add(plain("forced_part", "1/s", "b*k_ratio*(speed_m_s/nu_ratio)^" + power(form)));
    all.add(
        plain(
            "loss_1_s",
            "1/s",
            "still_1_s + "
                + (mixes(form) ? "(forced_part^m + natural_part^m)^(1/m)" : "forced_part")));
    return all;
  }

  private static boolean linear(Form form) {
    return form == Form.MIXED_LINEAR;
  }

  private static boolean mixes(Form form) {
    return form == Form.MIXED || linear(form);
  }

  private static String power(Form form) {
    return form == Form.KING_HALF ? "0.5" : "n";
  }
}
