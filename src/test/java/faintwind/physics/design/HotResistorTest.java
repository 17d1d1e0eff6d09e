package faintwind.physics.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** 100 Ω on 5 V, 0.2 Ω of cable, 20 K/W of epoxy: Ohm and Joule by hand. */
class HotResistorTest {
  @Test
  void withoutATemperatureCoefficientItIsAPlainCircuit() {
    HotResistor plain = new HotResistor(100, 0, 5, 0.2, 20);
    // 5/100.2 = 49.900 mA, squared on 100 Ω 0.24900 W, 4.980 K above the ball
    assertThat(plain.power_W(310)).isCloseTo(0.249003, within(1e-6));
    assertThat(plain.body_K(310)).isCloseTo(314.98006, within(1e-5));
  }

  /** 1000 ppm/K and a body at 70 °C, 50 K above 20 °C: 105 Ω. */
  @Test
  void aWarmBodyHasAnotherResistance() {
    HotResistor warm = new HotResistor(100, 1e-3, 5, 0, 0);
    assertThat(warm.resistance_ohm(343.15)).isCloseTo(105, within(1e-9));
    assertThat(warm.resistance_ohm(293.15)).isCloseTo(100, within(1e-9));
    assertThat(warm.power_W(343.15)).isCloseTo(25 / 105.0, within(1e-9));
  }

  /** Body, power and resistance depend on one another and agree in the end. */
  @Test
  void theBodyIsAsWarmAsItsOwnPowerMakesIt() {
    HotResistor hot = new HotResistor(100, -1e-3, 5, 1, 60);
    double body_K = hot.body_K(320);
    double r = hot.resistance_ohm(body_K);
    double power_W = Math.pow(5 / (r + 1), 2) * r;
    assertThat(body_K).isCloseTo(320 + 60 * power_W, within(1e-4));
  }
}
