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
 * @param notCounted what a person left out of the fit
 */
public record RunConditions(
    OptionalDouble air_K,
    OptionalDouble pressure_Pa,
    OptionalDouble relativeHumidity,
    Optional<Direction> direction,
    Optional<String> thermocouple,
    String note,
    NotCounted notCounted) {

  public static final RunConditions NONE =
      new RunConditions(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          "");

  /** Of a run from which nothing was left out. */
  public RunConditions(
      OptionalDouble air_K,
      OptionalDouble pressure_Pa,
      OptionalDouble relativeHumidity,
      Optional<Direction> direction,
      Optional<String> thermocouple,
      String note) {
    this(air_K, pressure_Pa, relativeHumidity, direction, thermocouple, note, NotCounted.NOTHING);
  }
}
