package faintwind.properties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.physics.Thermocouple;
import faintwind.physics.part.ThermocoupleType;
import java.io.IOException;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThermocouplePropertiesTest {

  static Stream<Thermocouple> types() throws IOException {
    return Library.shipped().thermocouples().stream().map(ThermocoupleType::function);
  }

  @ParameterizedTest
  @MethodSource("types")
  void temperatureComesBackWithinAMillikelvin(Thermocouple type) {
    for (double t = 233.15; t <= 373.15; t += 0.37) {
      assertThat(type.temperature_K(type.emf_V(t))).isCloseTo(t, within(1e-3));
    }
  }

  @ParameterizedTest
  @MethodSource("types")
  void deltaComesBackWhateverTheColdJunction(Thermocouple type) {
    Random random = new Random(20_260_101);
    for (int i = 0; i < 200; i++) {
      double cold = 250 + 80 * random.nextDouble();
      double delta = 60 * random.nextDouble();
      double emf = type.differential_V(cold + delta, cold);
      assertThat(type.delta_K(emf, cold)).isCloseTo(delta, within(1e-3));
    }
  }

  @ParameterizedTest
  @MethodSource("types")
  void exchangedJunctionsTurnTheSign(Thermocouple type) {
    assertThat(type.differential_V(310, 290)).isEqualTo(-type.differential_V(290, 310));
    assertThat(type.differential_V(310, 290)).isPositive();
  }

  @ParameterizedTest
  @MethodSource("types")
  void noJumpWherePiecesMeet(Thermocouple type) {
    double below = type.emf_V(273.15 - 1e-9);
    double above = type.emf_V(273.15 + 1e-9);
    assertThat(above).isCloseTo(below, within(1e-10));
    // the published pieces of type N differ in slope by 0.9 % at 0 °C; the others agree to 1e-5
    double ratio = type.sensitivity_V_K(273.15 + 1e-9) / type.sensitivity_V_K(273.15 - 1e-9);
    assertThat(ratio).isCloseTo(1, within(type.letter().equals("N") ? 0.009 : 1e-4));
  }

  @ParameterizedTest
  @MethodSource("types")
  void sensitivityIsTheSlopeOfTheEmf(Thermocouple type) {
    for (double t = 260.15; t < 340; t += 3.3) {
      double slope = (type.emf_V(t + 0.01) - type.emf_V(t - 0.01)) / 0.02;
      assertThat(type.sensitivity_V_K(t) / slope).isCloseTo(1, within(1e-5));
    }
  }
}
