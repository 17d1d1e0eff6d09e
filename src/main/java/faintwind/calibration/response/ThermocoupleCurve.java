package faintwind.calibration.response;

/**
 * From difference to signal: the sensitivity of a thermocouple rises with temperature, so that the
 * same signal is fewer kelvin in warmer air and the signal bends upwards with the difference.
 *
 * <p>signal − offset = perKelvin · ∫ from Tair to Tair + Δ of S(T)/S(Tref) dT with S(T)/S(Tref) = 1
 * + slope (T − Tref) + bend (T − Tref)². A signal that was turned into kelvin with one constant
 * sensitivity keeps both effects.
 *
 * @param perKelvin signal per kelvin at the reference temperature
 * @param reference_K reference temperature, K
 * @param slope relative rise of the sensitivity per kelvin at the reference temperature
 * @param bend relative second-order coefficient, 1/K²
 */
public record ThermocoupleCurve(double perKelvin, double reference_K, double slope, double bend) {

  /** Signal of a difference, offset taken off. */
  public double signal(double delta_K, double air_K) {
    double d = air_K - reference_K;
    double s0 = 1 + d * (slope + d * bend);
    double s1 = slope + 2 * bend * d;
    return perKelvin * delta_K * (s0 + delta_K * (0.5 * s1 + delta_K * bend / 3));
  }

  /** Signal per kelvin at that difference. */
  public double signalByDelta(double delta_K, double air_K) {
    double d = air_K + delta_K - reference_K;
    return perKelvin * (1 + d * (slope + d * bend));
  }

  /** Change of the signal with the slope. */
  public double signalBySlope(double delta_K, double air_K) {
    return perKelvin * delta_K * (air_K - reference_K + 0.5 * delta_K);
  }

  /** Difference of a signal, offset taken off, by Newton's method. */
  public double delta_K(double signal, double air_K) {
    double delta = signal / signalByDelta(0, air_K);
    for (int i = 0; i < 20; i++) {
      double step = (signal(delta, air_K) - signal) / signalByDelta(delta, air_K);
      delta -= step;
      // the curve bends so little that the next step would be below the last digit
      if (Math.abs(step) < 1e-6 * (1 + Math.abs(delta))) {
        break;
      }
    }
    return delta;
  }
}
