package faintwind.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirFieldTest {
  /** 0 °C is 273.15 K, a hectopascal 100 Pa, a per cent 0.01 (SI brochure). */
  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvSource({
    "TEMPERATURE, 0, 273.15",
    "TEMPERATURE, -40, 233.15",
    "PRESSURE, 1013.25, 101325",
    "HUMIDITY, 50, 0.5"
  })
  void numbersAreTakenToSi(AirField field, double value, double si) {
    assertThat(field.si(value)).isCloseTo(si, within(1e-9));
  }

  /** What the field lets through, the state of the air takes. */
  @ParameterizedTest(name = "{0} °C, {1} hPa, {2} %")
  @CsvSource({"-73, 300, 0", "126, 1200, 100"})
  void theEdgesOfTheFieldsAreAirs(double air_C, double pressure_hPa, double humidity_pct) {
    AirState air =
        new AirState(
            AirField.TEMPERATURE.si(air_C),
            AirField.PRESSURE.si(pressure_hPa),
            AirField.HUMIDITY.si(humidity_pct));
    assertThat(air.pressure_Pa()).isEqualTo(100 * pressure_hPa);
  }
}
