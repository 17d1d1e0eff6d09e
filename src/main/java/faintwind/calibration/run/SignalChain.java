package faintwind.calibration.run;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What stands between the junctions and the file: signal = offset + sign · gain · (voltage or
 * difference).
 *
 * @param input kind of input
 * @param thermocouple type letter
 * @param gain amplifier gain, volts out per volt in (1 for a difference in kelvin)
 * @param offset offset in the file's signal unit
 * @param sign +1, or −1 where the leads are exchanged
 * @param resolution range, bits and noise of the logger
 */
public record SignalChain(
    Input input,
    Optional<String> thermocouple,
    OptionalDouble gain,
    OptionalDouble offset,
    int sign,
    Resolution resolution) {

  /** The signal is taken as it is. */
  public static final SignalChain AS_IS =
      new SignalChain(
          Input.VOLTAGE,
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          1,
          new Resolution(OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.empty()));

  public SignalChain {
    if (sign != 1 && sign != -1) {
      throw new IllegalArgumentException("sign = " + sign + ", allowed +1 or -1");
    }
  }

  /** What kind of input the file's numbers came through. */
  public enum Input {
    VOLTAGE,
    DIFFERENCE_K,
    /** A meter that adds its own terminal temperature to what it shows. */
    COMPENSATED_C
  }

  /**
   * What the logger can tell apart.
   *
   * @param range full range of the input in the file's signal unit
   * @param bits of the converter
   * @param noise standard deviation in the file's signal unit
   */
  public record Resolution(OptionalDouble range, OptionalInt bits, OptionalDouble noise) {}
}
