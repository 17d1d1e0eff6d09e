package faintwind.calibration.response;

import faintwind.physics.AirState;
import org.jspecify.annotations.Nullable;

/**
 * The air around the balls, with the two properties that a ball's loss needs, fast enough to be
 * asked for at every step of an integration.
 *
 * <p>Between 270 and 350 K dry air's conductivity goes as T^0.846 and its viscosity as T^0.778
 * within 0.2 %: fitted to Lemmon and Jacobsen (2004) at 250, 300 and 350 K. Density by the ideal
 * gas law, less 0.378 of the water vapour's share (common textbook form).
 */
public final class AirPoint {
  /** Exponent of conductivity in temperature. */
  static final double K_EXPONENT = 0.846;

  /** Exponent of kinematic viscosity in temperature at constant pressure. */
  static final double NU_EXPONENT = 1.778;

  private static final double K_300 = 0.0263845;

  /** Viscosity of dry air at 300 K, Pa s. */
  static final double MU_300 = 1.85373e-5;

  /** Gas constant of dry air, J/(kg K). */
  static final double R_DRY = 287.05;

  /** How much lighter water vapour is than the air it takes the place of, as a share. */
  static final double VAPOUR_DEFICIT = 0.378;

  static final double ZERO_C_K = 273.15;

  /** Magnus' formula of the saturation pressure: its value at 0 °C and its two numbers. */
  static final double SATURATION_0_PA = 610.94;

  static final double SATURATION_FACTOR = 17.625;
  static final double SATURATION_C = 243.04;

  private final double air_K;
  private final double nu_300;
  private final double perRootNu_300;
  private @Nullable Own own;

  private AirPoint(double air_K, double nu_300, double perRootNu_300) {
    this.air_K = air_K;
    this.nu_300 = nu_300;
    this.perRootNu_300 = perRootNu_300;
  }

  /** Properties at the air's own temperature, found when they are first asked for. */
  private record Own(double log, double conductivity, double viscosity) {}

  private Own own() {
    Own found = own;
    if (found == null) {
      double log = log(air_K);
      found = new Own(log, conductivityOfLog(log), viscosityOfLog(log));
      own = found;
    }
    return found;
  }

  /** The point of an air state. */
  public static AirPoint of(AirState air) {
    double celsius = air.temperature_K() - ZERO_C_K;
    double saturation_Pa =
        SATURATION_0_PA * Math.exp(SATURATION_FACTOR * celsius / (celsius + SATURATION_C));
    double vapour = air.relativeHumidity() * saturation_Pa / air.pressure_Pa();
    double density_300 = air.pressure_Pa() / (R_DRY * 300) * (1 - VAPOUR_DEFICIT * vapour);
    double nu_300 = MU_300 / density_300;
    return new AirPoint(air.temperature_K(), nu_300, 1 / Math.sqrt(nu_300));
  }

  /** The same air at another temperature. */
  public AirPoint withTemperature(double temperature_K) {
    return new AirPoint(temperature_K, nu_300, perRootNu_300);
  }

  /** The same air at so many times the pressure, its vapour's share unchanged. */
  public AirPoint withPressureTimes(double factor) {
    return new AirPoint(air_K, nu_300 / factor, perRootNu_300 * Math.sqrt(factor));
  }

  /** Air temperature, K. */
  public double air_K() {
    return air_K;
  }

  /** Thermal conductivity at a film temperature, W/(m K). */
  public double conductivity(double film_K) {
    return conductivityOfLog(log(film_K));
  }

  /** Kinematic viscosity at a film temperature, m²/s. */
  public double viscosity(double film_K) {
    return viscosityOfLog(log(film_K));
  }

  /** Logarithm of a temperature over 300 K, to be taken once for both properties. */
  static double log(double temperature_K) {
    return Math.log(temperature_K / 300);
  }

  static double conductivityOfLog(double log) {
    return K_300 * Math.exp(K_EXPONENT * log);
  }

  double viscosityOfLog(double log) {
    return nu_300 * Math.exp(NU_EXPONENT * log);
  }

  /** Kinematic viscosity at 300 K, m²/s. */
  double nu_300() {
    return nu_300;
  }

  /** One over the root of {@link #nu_300}. */
  double perRootNu_300() {
    return perRootNu_300;
  }

  /** Logarithm of the air's own temperature over 300 K. */
  double ownLog() {
    return own().log();
  }

  /** Thermal conductivity at the air's own temperature, W/(m K). */
  double ownConductivity() {
    return own().conductivity();
  }

  /** Kinematic viscosity at the air's own temperature, m²/s. */
  double ownViscosity() {
    return own().viscosity();
  }
}
