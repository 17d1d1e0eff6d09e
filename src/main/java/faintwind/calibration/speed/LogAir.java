package faintwind.calibration.speed;

import java.util.OptionalDouble;

/**
 * The state of the air as far as it is known: of a row, or as given for a whole log.
 *
 * @param temperature_K K
 * @param pressure_Pa Pa
 * @param relativeHumidity 0 to 1
 */
public record LogAir(
    OptionalDouble temperature_K, OptionalDouble pressure_Pa, OptionalDouble relativeHumidity) {
  public static final LogAir UNKNOWN =
      new LogAir(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
