package faintwind.calibration.fit.track;

import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalUnit;
import java.util.Optional;

/**
 * The nominal signal per kelvin. Only ratios can be identified from runs, so it need not be right;
 * but the natural and radiation terms have their usual size only if it is about right. From the
 * thermocouple's letter and the gain where known; the gain otherwise is that power of ten which
 * puts the largest signal between 8 and 80 K.
 */
public final class SignalScale {
  private static final double SOME_TYPE_V_K = 40e-6;
  private static final double USUAL_DELTA_K = 30;
  private static final double LEAST_DELTA_K = 8;

  private SignalScale() {}

  public static double perKelvin(
      SignalUnit unit,
      SignalChain chain,
      Optional<String> letter,
      double reference_K,
      double largest) {
    if (unit == SignalUnit.DELTA_K) {
      return chain.sign();
    }
    if (unit == SignalUnit.SIGNAL_COUNTS) {
      return chain.sign() * Math.abs(largest) / USUAL_DELTA_K;
    }
    double bare =
        unit.perVolt().orElse(1)
            * letter
                .flatMap(TypeLetter::of)
                .map(type -> type.sensitivity_V_K(reference_K))
                .orElse(SOME_TYPE_V_K);
    double gain = chain.gain().orElseGet(() -> powerOfTen(Math.abs(largest) / bare));
    return chain.sign() * bare * gain;
  }

  private static double powerOfTen(double bareDelta_K) {
    return Math.pow(10, Math.floor(Math.log10(bareDelta_K / LEAST_DELTA_K)));
  }
}
