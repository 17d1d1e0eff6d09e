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
    variance =
        sensitivity * sensitivity * p[HeatState.BEAD * HeatState.SIZE + HeatState.BEAD] + noise2;
    for (int i = 0; i < HeatState.SIZE; i++) {
      gain[i] = p[i * HeatState.SIZE + HeatState.BEAD] * sensitivity / variance;
    }
  }

  /** Corrects the state by what was foreseen. */
  void correct(HeatState state) {
    double[] p = state.covariance();
    double[] mean = state.mean();
    for (int i = 0; i < HeatState.SIZE; i++) {
      mean[i] += gain[i] * miss;
      for (int j = 0; j < HeatState.SIZE; j++) {
        p[i * HeatState.SIZE + j] -= gain[i] * gain[j] * variance;
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
