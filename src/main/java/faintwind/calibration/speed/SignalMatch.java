package faintwind.calibration.speed;

import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From the signal of a log to that of a calibration: signal = scale · logged + shift. The same unit
 * needs nothing; volts, millivolts and microvolts differ by powers of ten; between kelvin and
 * voltage stands the chain (type, gain, offset, sign), and where it is not on record there is no
 * match.
 *
 * @param scale calibration's units per unit of the log
 * @param shift in the calibration's unit
 */
public record SignalMatch(double scale, double shift) {
  private static final double ROOM_K = 293.15;

  /** The match, or nothing where the chain that links the two units is not on record. */
  public static Optional<SignalMatch> of(SignalUnit logged, SignalPath calibrated) {
    SignalUnit wanted = calibrated.unit();
    if (logged == wanted) {
      return Optional.of(new SignalMatch(1, 0));
    }
    OptionalDouble from_V = volts(logged);
    OptionalDouble to_V = volts(wanted);
    if (from_V.isPresent() && to_V.isPresent()) {
      return Optional.of(new SignalMatch(from_V.getAsDouble() / to_V.getAsDouble(), 0));
    }
    SignalChain chain = calibrated.chain();
    Optional<TypeLetter> type = chain.thermocouple().flatMap(TypeLetter::of);
    if (type.isEmpty() || chain.gain().isEmpty() || chain.offset().isEmpty()) {
      return Optional.empty();
    }
    double volts_K = chain.sign() * chain.gain().getAsDouble() * type.get().sensitivity_V_K(ROOM_K);
    double offset = chain.offset().getAsDouble();
    if (logged == SignalUnit.DELTA_K && to_V.isPresent()) {
      return Optional.of(new SignalMatch(volts_K / to_V.getAsDouble(), offset));
    }
    if (wanted == SignalUnit.DELTA_K && from_V.isPresent()) {
      double scale = from_V.getAsDouble() / volts_K;
      return Optional.of(new SignalMatch(scale, -offset * scale));
    }
    return Optional.empty();
  }

  /** Whether the log has the calibration's unit. */
  boolean isSame() {
    return scale == 1 && shift == 0;
  }

  /** A logged signal in the calibration's unit. */
  public double apply(double logged) {
    return scale * logged + shift;
  }

  private static OptionalDouble volts(SignalUnit unit) {
    return switch (unit) {
      case SIGNAL_V -> OptionalDouble.of(1);
      case SIGNAL_MV -> OptionalDouble.of(1e-3);
      case SIGNAL_UV -> OptionalDouble.of(1e-6);
      case DELTA_K, SIGNAL_COUNTS -> OptionalDouble.empty();
    };
  }
}
