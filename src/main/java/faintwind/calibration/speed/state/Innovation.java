package faintwind.calibration.speed.state;

import faintwind.calibration.response.ThermocoupleCurve;

/**
 * Update of a {@link HeatState} by one reading of the signal: signal = offset + curve(bead) +
 * noise. For one thread.
 */
public final class Innovation {
  private final ThermocoupleCurve curve;
  private final double offset;
  private double gain0;
  private double gain1;
  private double gain2;
  private double gain3;
  private double miss;
  private double variance;
  private double sensitivity;

  Innovation(FieldFormula formula) {
    curve = formula.path().curve();
    offset = formula.path().offset();
  }

  /** Compares with what the state foretells, and leaves the state as it is. */
  void foresee(HeatState state, double signal, double noise2, double air_K) {
    double bead_K = state.believed().bead_K;
    StateCovariance p = state.covariance();
    sensitivity = curve.signalByDelta(bead_K, air_K);
    miss = signal - offset - curve.signal(bead_K, air_K);
    variance = sensitivity * sensitivity * p.p7 + noise2;
    double share = sensitivity / variance;
    gain0 = p.p2 * share;
    gain1 = p.p5 * share;
    gain2 = p.p7 * share;
    gain3 = p.p8 * share;
  }

  /** Corrects the state by what was foreseen. */
  void correct(HeatState state) {
    HeatMean mean = state.believed();
    mean.delta_K += gain0 * miss;
    mean.flow_K_s += gain1 * miss;
    mean.bead_K += gain2 * miss;
    mean.ratio += gain3 * miss;
    state.covariance().correct(gain0, gain1, gain2, gain3, variance);
  }

  /** The reading does not count: no gain. */
  void ignore() {
    gain0 = 0;
    gain1 = 0;
    gain2 = 0;
    gain3 = 0;
    miss = 0;
    sensitivity = 0;
  }

  /** What a unit of the miss changes the difference by. */
  double gain0() {
    return gain0;
  }

  /** The same of the heat flow. */
  double gain1() {
    return gain1;
  }

  /** The same of the bead. */
  double gain2() {
    return gain2;
  }

  /** The same of the loss ratio. */
  double gain3() {
    return gain3;
  }

  /** Reading less what was foretold, signal unit. */
  public double miss() {
    return miss;
  }

  /** Variance of {@link #miss}. */
  public double variance() {
    return variance;
  }

  /** Signal per kelvin at the bead's difference. */
  double sensitivity() {
    return sensitivity;
  }
}
