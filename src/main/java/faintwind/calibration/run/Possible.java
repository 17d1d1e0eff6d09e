package faintwind.calibration.run;

import java.util.OptionalInt;

/**
 * What a row can hold of signal and supply; what lies beyond was not measured. The limits are our
 * own choice, no source: far wider than any instrument that works, so that only what is false falls
 * out.
 *
 * @param mostSignal largest signal of either sign, offset included; infinite where nothing is known
 * @param most_V largest supply
 */
public record Possible(double mostSignal, double most_V) {
  /** A ball at 183 °C, where tin-lead solder melts, in air of −73 °C. */
  public static final double MOST_DELTA_K = 256;

  /** A heater of this build is fed by a few volts. */
  public static final double MOST_SUPPLY_V = 60;

  /** More than any thermocouple letter gives (from memory: type E, some 81 µV/K at the most). */
  private static final double STEEPEST_V_K = 100e-6;

  private static final double ENDLESS = Double.POSITIVE_INFINITY;

  /** A supply that is off may read a little below 0. */
  private static final double LEAST_SUPPLY_V = -1;

  /** No tolerance of the parts makes a pair this many times as warm. */
  private static final double WARMER = 3;

  /** Of a unit alone. */
  public static Possible of(SignalUnit unit) {
    double most = unit == SignalUnit.DELTA_K ? MOST_DELTA_K : Double.POSITIVE_INFINITY;
    return new Possible(most, MOST_SUPPLY_V);
  }

  /** Of what the chain can hand on: its range, its bits, its thermocouple's voltage. */
  public static Possible of(SignalUnit unit, SignalChain chain) {
    if (chain.input() == SignalChain.Input.COMPENSATED_C) {
      return of(unit);
    }
    double most = Math.min(of(unit).mostSignal, chain.resolution().range().orElse(ENDLESS));
    OptionalInt bits = chain.resolution().bits();
    if (unit == SignalUnit.SIGNAL_COUNTS && bits.isPresent()) {
      most = Math.min(most, Math.pow(2, bits.getAsInt()));
    }
    if (unit.perVolt().isPresent() && chain.thermocouple().isPresent()) {
      double gain = chain.gain().orElse(ENDLESS);
      double volts = gain * MOST_DELTA_K * STEEPEST_V_K;
      double offset = Math.abs(chain.offset().orElse(0));
      most = Math.min(most, offset + unit.perVolt().getAsDouble() * volts);
    }
    return new Possible(most, MOST_SUPPLY_V);
  }

  /** Of what a calibration says of its signal and the chain it came through. */
  public static Possible of(SignalPath path) {
    Possible byChain = of(path.unit(), path.chain());
    double offset = Math.abs(path.chain().offset().orElse(0));
    double byBalls = offset + MOST_DELTA_K * Math.abs(path.perKelvin());
    return path.chain().input() == SignalChain.Input.COMPENSATED_C
        ? byChain
        : new Possible(Math.min(byChain.mostSignal, byBalls), MOST_SUPPLY_V);
  }

  /**
   * Of what a design says.
   *
   * @param still_K difference of temperature that it expects in still air
   */
  public Possible byDesign(SignalUnit unit, double still_K) {
    return unit == SignalUnit.DELTA_K
        ? new Possible(Math.min(mostSignal, WARMER * still_K), most_V)
        : this;
  }

  public boolean allowsSignal(double signal) {
    return Math.abs(signal) <= mostSignal;
  }

  public boolean allowsSupply(double supply_V) {
    return supply_V >= LEAST_SUPPLY_V && supply_V <= most_V;
  }
}
