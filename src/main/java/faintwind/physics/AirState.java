package faintwind.physics;

/**
 * The state of the air around the balls.
 *
 * @param temperature_K absolute temperature, K
 * @param pressure_Pa absolute pressure, Pa
 * @param relativeHumidity relative humidity, 0 to 1
 */
public record AirState(double temperature_K, double pressure_Pa, double relativeHumidity) {

  /** 20 °C, 1013.25 hPa, 50 %: what is assumed where nothing was recorded. */
  public static final AirState ROOM = new AirState(293.15, 101_325.0, 0.5);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException outside 200–400 K, 30–120 kPa or 0–1
   */
  public AirState {
    require("temperature_K", temperature_K, 200, 400);
    require("pressure_Pa", pressure_Pa, 30_000, 120_000);
    require("relativeHumidity", relativeHumidity, 0, 1);
  }

  private static void require(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(name + " = " + value + ", allowed " + low + " to " + high);
    }
  }

  /** The same at another temperature. */
  public AirState withTemperature(double other_K) {
    return new AirState(other_K, pressure_Pa, relativeHumidity);
  }

  /** The same at another pressure. */
  public AirState withPressure(double other_Pa) {
    return new AirState(temperature_K, other_Pa, relativeHumidity);
  }
}
