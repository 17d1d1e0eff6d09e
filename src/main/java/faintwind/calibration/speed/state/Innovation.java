package faintwind.calibration.speed.state;

import faintwind.calibration.response.ThermocoupleCurve;

/**
 * Update of a {@link HeatState} by one reading of the signal: signal = offset + curve(bead) +
 * noise. Reuses its array; for one thread.
 */
public final class Innovation {
  private final ThermocoupleCurve curve;
  private final double offset;
  private final double[] gain = new double[HeatState.SIZE];
  private double miss;
  private double variance;
  private double sensitivity;

  Innovation(FieldFormula formula) {
    curve = formula.path().curve();
    offset = formula.path().offset();
  }

  /** Compares with what the state foretells, and leaves the state as it is. */
  void foresee(HeatState state, double signal, double noise2, double air_K) {
    double bead_K = state.mean()[HeatState.BEAD];
    sensitivity = curve.signalByDelta(bead_K, air_K);
    miss = signal - offset - curve.signal(bead_K, air_K);
    double[] p = state.covariance();
    variance = sensitivity * sensitivity * p[HeatState.BEADS] + noise2;
    double share = sensitivity / variance;
    gain[0] = p[2] * share;
    gain[1] = p[5] * share;
    gain[2] = p[7] * share;
    gain[3] = p[8] * share;
  }

  /** Corrects the state by what was foreseen. */
  void correct(HeatState state) {
    double[] p = state.covariance();
    double[] mean = state.mean();
    int at = 0;
    for (int i = 0; i < HeatState.SIZE; i++) {
      mean[i] += gain[i] * miss;
      double less = gain[i] * variance;
      for (int j = i; j < HeatState.SIZE; j++) {
        p[at++] -= less * gain[j];
      }
    }
  }

  /** The reading does not count: no gain. */
  void ignore() {
    java.util.Arrays.fill(gain, 0);
    miss = 0;
    sensitivity = 0;
  }

  double[] gain() {
    return gain;
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
