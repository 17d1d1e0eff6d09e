package faintwind.calibration.beat;

/**
 * Energy of a sound above a frequency, millisecond by millisecond; holds the latest minute only.
 * Mutable; for one thread.
 */
final class EnergyBins {
  static final double BIN_S = 0.001;

  /** Bins after which the older ones should be taken out, with room for one more piece. */
  static final int FULL = 60_000;

  /** Most samples taken at once: at 8000 a second they fill 512 bins. */
  static final int PIECE = 4096;

  private final int rate_Hz;
  private final HighPass pass;
  private final double[] bins = new double[FULL + PIECE];
  private int used;
  private long dropped;
  private long heard;
  private long binEnd;
  private double energy;
  private double all;

  EnergyBins(double cut_Hz, int rate_Hz) {
    this.rate_Hz = rate_Hz;
    pass = new HighPass(cut_Hz / rate_Hz);
    binEnd = endOf(0);
  }

  /** Takes samples, at most {@link #PIECE}. */
  void hear(float[] samples, int from, int to) {
    for (int i = from; i < to; i++) {
      double value = pass.next(samples[i]);
      energy += value * value;
      heard++;
      if (heard >= binEnd) {
        bins[used++] = energy;
        all += energy;
        energy = 0;
        binEnd = endOf(dropped + used);
      }
    }
  }

  private long endOf(long bin) {
    return Math.round((bin + 1) * BIN_S * rate_Hz);
  }

  int used() {
    return used;
  }

  /** How many bins were forgotten: the number of the first that is held. */
  long dropped() {
    return dropped;
  }

  /** Mean energy of a bin since the beginning. */
  double mean() {
    return all / Math.max(1, dropped + used);
  }

  /** Forgets all but the latest bins. */
  void keepLast(int count) {
    int gone = used - count;
    System.arraycopy(bins, gone, bins, 0, count);
    used = count;
    dropped += gone;
  }

  /** Running sums of the bins that are held: element k is all energy before bin k. */
  double[] sums() {
    double[] sums = new double[used + 1];
    for (int k = 0; k < used; k++) {
      sums[k + 1] = sums[k] + bins[k];
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
