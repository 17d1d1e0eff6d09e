package faintwind.calibration.virtual;

import faintwind.calibration.run.SignalUnit;

/**
 * The made-up signal chain: thermocouple, amplifier and logger. A signal in kelvin is the voltage
 * over one constant sensitivity, so it keeps the thermocouple's curvature.
 *
 * @param unit of the logged signal
 * @param wire thermocouple
 * @param scale signal units per kelvin at 20 °C
 * @param offset in signal units
 * @param reading noise, resolution and step of the logger
 * @param bead_s lag of the junctions, s
 */
public record VirtualChain(
    SignalUnit unit, Wire wire, double scale, double offset, Reading reading, double bead_s) {

  /**
   * The logger.
   *
   * @param noise standard deviation in signal units
   * @param resolution least step in signal units; 0 for none
   * @param step_s nominal time between rows, s
   * @param jitter_s standard deviation of a row's time about that, s
   */
  public record Reading(double noise, double resolution, double step_s, double jitter_s) {
    /** The same step without noise, resolution or jitter: isolates the error of a calibration. */
    Reading quiet() {
      return new Reading(0, 0, step_s, 0);
    }
  }

  /**
   * Thermocouple wires by the slope and curvature of their voltage near room temperature; derived
   * from the ITS-90 reference functions at 0–60 °C, rounded.
   */
  public enum Wire {
    K(40.3, 0.0226),
    T(40.7, 0.0884);

    private final double slope_uV_K;
    private final double change_uV_K2;

    Wire(double slope_uV_K, double change_uV_K2) {
      this.slope_uV_K = slope_uV_K;
      this.change_uV_K2 = change_uV_K2;
    }

    /** Microvolts per kelvin at 20 °C. */
    public double slope_uV_K() {
      return slope_uV_K;
    }

    /** Voltage between junctions at two temperatures over the sensitivity at 20 °C, K. */
    double apparent_K(double warm_K, double cool_K) {
      double mean_C = (warm_K + cool_K) / 2 - 293.15;
      return (warm_K - cool_K) * (1 + change_uV_K2 / slope_uV_K * mean_C);
    }
  }

  /** Signal without noise or rounding. */
  double signal(double warm_K, double cool_K) {
    return offset + scale * wire.apparent_K(warm_K, cool_K);
  }

  /** The signal as the logger would write it, with its noise added. */
  double logged(double signal, double gaussian) {
    double noisy = signal + reading.noise() * gaussian;
    return reading.resolution() > 0
        ? Math.rint(noisy / reading.resolution()) * reading.resolution()
        : noisy;
  }

  VirtualChain quiet() {
    return new VirtualChain(unit, wire, scale, offset, reading.quiet(), bead_s);
  }
}
