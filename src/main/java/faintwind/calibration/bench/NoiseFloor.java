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
  /** The floor of all lines. */
  static NoiseFloor of(Spectrum spectrum) {
    return new Fit(spectrum, OptionalDouble.empty()).floor();
  }

  /** The floor beside an oscillation, whose lines are left out. */
  static NoiseFloor beside(Spectrum spectrum, double frequency_Hz) {
    return new Fit(spectrum, OptionalDouble.of(frequency_Hz)).floor();
  }

  private record Fit(Spectrum spectrum, OptionalDouble without_Hz) {
    private static final int BESIDE = 3;

    NoiseFloor floor() {
      double flat = white(0);
      double flatCost = cost(0, flat);
      double least = flatCost;
      double corner = 0;
      double last = spectrum.frequency_Hz(spectrum.size() - 1);
      double factor = Math.pow(10, 1.0 / OwnChoices.STEPS_A_DECADE);
      for (double tried = spectrum.resolution_Hz(); tried <= last; tried *= factor) {
        double cost = cost(tried, white(tried));
        if (cost < least) {
          least = cost;
          corner = tried;
        }
      }
      return flatCost - least < OwnChoices.STANDS_OUT
          ? new NoiseFloor(flat, OptionalDouble.empty())
          : new NoiseFloor(white(corner), OptionalDouble.of(corner));
    }

    private boolean counts(int k) {
      return without_Hz.isEmpty()
          || Math.abs(spectrum.frequency_Hz(k) - without_Hz.getAsDouble())
              > (BESIDE + 0.5) * spectrum.resolution_Hz();
    }

    private double white(double corner_Hz) {
      double sum = 0;
      int lines = 0;
      for (int k = 0; k < spectrum.size(); k++) {
        if (counts(k)) {
          sum += spectrum.density(k) / (1 + corner_Hz / spectrum.frequency_Hz(k));
          lines++;
        }
      }
      return sum / lines;
    }

    private double cost(double corner_Hz, double white) {
      double sum = 0;
      for (int k = 0; k < spectrum.size(); k++) {
        if (counts(k)) {
          double expected =
              Math.max(white, Double.MIN_NORMAL) * (1 + corner_Hz / spectrum.frequency_Hz(k));
          sum += Math.log(expected) + spectrum.density(k) / expected;
        }
      }
      return sum;
    }
  }

  /** Density at a frequency. */
  double at(double frequency_Hz) {
    return white * (1 + corner_Hz.orElse(0) / frequency_Hz);
  }
}
