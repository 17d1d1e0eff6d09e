package faintwind.calibration.bench;

import java.util.OptionalDouble;

/**
 * White noise with a 1/f part: S(f) = white · (1 + corner / f). Fitted by Whittle's likelihood: the
 * least Σ (ln S_k + P_k / S_k) over all lines (Whittle 1953, from memory); for each corner the best
 * white level is the mean of P_k / (1 + corner / f_k).
 *
 * @param white density of the white part, signal² per hertz
 * @param corner_Hz where the 1/f part equals the white one; empty where it does not stand out
 */
record NoiseFloor(double white, OptionalDouble corner_Hz) {
  /** A 1/f part must raise the log likelihood by this much: one in a hundred by chance. */
  private static final double STANDS_OUT = 3.3;

  private static final int STEPS_A_DECADE = 12;

  static NoiseFloor of(Spectrum spectrum) {
    double flat = white(spectrum, 0);
    double least = cost(spectrum, 0, flat);
    double flatCost = least;
    double corner = 0;
    double first = spectrum.resolution_Hz();
    double last = spectrum.frequency_Hz(spectrum.size() - 1);
    double factor = Math.pow(10, 1.0 / STEPS_A_DECADE);
    for (double tried = first; tried <= last; tried *= factor) {
      double cost = cost(spectrum, tried, white(spectrum, tried));
      if (cost < least) {
        least = cost;
        corner = tried;
      }
    }
    return flatCost - least < STANDS_OUT
        ? new NoiseFloor(flat, OptionalDouble.empty())
        : new NoiseFloor(white(spectrum, corner), OptionalDouble.of(corner));
  }

  /** Density at a frequency. */
  double at(double frequency_Hz) {
    return white * (1 + corner_Hz.orElse(0) / frequency_Hz);
  }

  private static double white(Spectrum s, double corner_Hz) {
    double sum = 0;
    for (int k = 0; k < s.size(); k++) {
      sum += s.density(k) / (1 + corner_Hz / s.frequency_Hz(k));
    }
    return sum / s.size();
  }

  private static double cost(Spectrum s, double corner_Hz, double white) {
    double sum = 0;
    for (int k = 0; k < s.size(); k++) {
      double expected = Math.max(white, Double.MIN_NORMAL) * (1 + corner_Hz / s.frequency_Hz(k));
      sum += Math.log(expected) + s.density(k) / expected;
    }
    return sum;
  }
}
