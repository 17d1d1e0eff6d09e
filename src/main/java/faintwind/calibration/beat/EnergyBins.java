package faintwind.calibration.beat;

import java.util.ArrayList;
import java.util.List;

/** Energy of a sound above a frequency, millisecond by millisecond. Mutable; for one thread. */
final class EnergyBins {
  static final double BIN_S = 0.001;

  private final int rate_Hz;
  private final HighPass pass;
  private final List<double[]> full = new ArrayList<>();
  private double[] bins = new double[60_000];
  private int used;
  private long heard;
  private long binEnd = 1;
  private double energy;

  EnergyBins(double cut_Hz, int rate_Hz) {
    this.rate_Hz = rate_Hz;
    pass = new HighPass(cut_Hz / rate_Hz);
    binEnd = endOf(0);
  }

  void hear(float[] samples, int count) {
    for (int i = 0; i < count; i++) {
      double value = pass.next(samples[i]);
      energy += value * value;
      heard++;
      if (heard >= binEnd) {
        keep(energy);
        energy = 0;
        binEnd = endOf(binCount());
      }
    }
  }

  private long endOf(long bin) {
    return Math.round((bin + 1) * BIN_S * rate_Hz);
  }

  private long binCount() {
    return (long) full.size() * bins.length + used;
  }

  private void keep(double value) {
    if (used == bins.length) {
      full.add(bins);
      bins = new double[bins.length];
      used = 0;
    }
    bins[used++] = value;
  }

  /** Running sums of the bins: element k is all energy before bin k. */
  double[] sums() {
    int count = (int) binCount();
    double[] sums = new double[count + 1];
    for (int k = 0; k < count; k++) {
      double[] part = k / bins.length < full.size() ? full.get(k / bins.length) : bins;
      sums[k + 1] = sums[k] + part[k % bins.length];
    }
    return sums;
  }

  /**
   * Two second-order Butterworth high passes in a row, by the bilinear transform (textbook formula,
   * from memory).
   */
  private static final class HighPass {
    private final double b0;
    private final double a1;
    private final double a2;
    private final double[] state = new double[8];

    HighPass(double cutPerRate) {
      double w = Math.tan(Math.PI * cutPerRate);
      double norm = 1 / (1 + Math.sqrt(2) * w + w * w);
      b0 = norm;
      a1 = 2 * (w * w - 1) * norm;
      a2 = (1 - Math.sqrt(2) * w + w * w) * norm;
    }

    double next(double in) {
      return section(section(in, 0), 4);
    }

    private double section(double in, int at) {
      double out =
          b0 * (in - 2 * state[at] + state[at + 1]) - a1 * state[at + 2] - a2 * state[at + 3];
      state[at + 1] = state[at];
      state[at] = in;
      state[at + 3] = state[at + 2];
      state[at + 2] = out;
      return out;
    }
  }
}
