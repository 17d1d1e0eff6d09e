package faintwind.calibration.bench;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A steady oscillation in the signal.
 *
 * @param frequency_Hz where it stands in the spectrum; above half the rate of rows it is folded
 *     down
 * @param amplitude of the oscillation, in the signal's unit
 * @param mains_Hz 50 or 60 where it stands where that mains frequency, or two or three times it,
 *     folds to
 */
public record PickUp(double frequency_Hz, double amplitude, OptionalInt mains_Hz) {
  private static final int BESIDE = 2;

  /** Mains and logger clock together: common practice, no source. */
  private static final double MAINS_SHARE = 0.002;

  static Optional<PickUp> in(Spectrum spectrum, NoiseFloor floor) {
    int highest = 0;
    for (int k = 1; k < spectrum.size(); k++) {
      if (ratio(spectrum, floor, k) > ratio(spectrum, floor, highest)) {
        highest = k;
      }
    }
    if (ratio(spectrum, floor, highest) < Math.log(spectrum.size() / OwnChoices.CHANCE)) {
      return Optional.empty();
    }
    double power = 0;
    for (int k = highest - BESIDE; k <= highest + BESIDE; k++) {
      if (k >= 0 && k < spectrum.size()) {
        double above = spectrum.density(k) - floor.at(spectrum.frequency_Hz(k));
        power += Math.max(0, above) * spectrum.resolution_Hz();
      }
    }
    double frequency_Hz = spectrum.frequency_Hz(highest);
    return Optional.of(
        new PickUp(frequency_Hz, Math.sqrt(2 * power), mains(spectrum, frequency_Hz)));
  }

  private static double ratio(Spectrum s, NoiseFloor floor, int k) {
    double expected = floor.at(s.frequency_Hz(k));
    return expected > 0 ? s.density(k) / expected : 0;
  }

  private static OptionalInt mains(Spectrum spectrum, double frequency_Hz) {
    for (int harmonic = 1; harmonic <= OwnChoices.HARMONICS; harmonic++) {
      for (int mains : new int[] {50, 60}) {
        double f = mains * harmonic;
        double tolerance = MAINS_SHARE * f + BESIDE * spectrum.resolution_Hz();
        boolean tells = tolerance < spectrum.rate_Hz() / 8;
        if (tells && Math.abs(folded_Hz(f, spectrum.rate_Hz()) - frequency_Hz) <= tolerance) {
          return OptionalInt.of(mains);
        }
      }
    }
    return OptionalInt.empty();
  }

  /** Where a frequency appears when it is sampled: |f − rate · round(f / rate)|. */
  static double folded_Hz(double frequency_Hz, double rate_Hz) {
    return Math.abs(frequency_Hz - rate_Hz * Math.rint(frequency_Hz / rate_Hz));
  }

  /** Whether mains of that frequency folds so near to zero that it looks like drift. */
  static boolean isBlind(int mains_Hz, double rate_Hz, double length_s) {
    return folded_Hz(mains_Hz, rate_Hz) < Math.max(4 / length_s, MAINS_SHARE * mains_Hz);
  }
}
