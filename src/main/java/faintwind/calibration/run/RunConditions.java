package faintwind.calibration.run;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the runs table says of the room and the run beside its motion.
 *
 * @param air_K room air temperature, K
 * @param pressure_Pa room air pressure, Pa
 * @param relativeHumidity 0 to 1
 * @param direction of the arm
 * @param thermocouple type letter
 * @param note free text
 */
public record RunConditions(
    OptionalDouble air_K,
    OptionalDouble pressure_Pa,
    OptionalDouble relativeHumidity,
    Optional<Direction> direction,
    Optional<String> thermocouple,
    String note) {

  public static final RunConditions NONE =
      new RunConditions(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          "");
}
