package faintwind.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the design document expects of 0.25 W in a bare copper ball of 12.7 mm (its own calculation,
 * no source): with no lead loss, and with 3 mW/K of it.
 */
class OrderOfMagnitudeTest {
  private static final double POWER_W = 0.25;

  @ParameterizedTest(name = "lead loss {0} W/K at {1} m/s: about {2} K (design document)")
  @CsvSource({
    "0, 0, 38, 2",
    "0, 1, 14, 1",
    "0, 3, 8, 0.6",
    "0.003, 0, 27, 2",
    "0.003, 1, 12, 0.6",
    "0.003, 3, 7.6, 0.5"
  })
  void deltaIsOfTheExpectedSize(double leadLoss, double speed, double expected_K, double band) {
    HeatBalance balance = balance(0.05);
    Ball ball = balance.pair().heated();
    double low = 0;
    double high = 100;
    while (high - low > 1e-6) {
      double x = 0.5 * (low + high);
      if (balance.loss_W(ball, x, speed) + leadLoss * x < POWER_W) {
        low = x;
      } else {
        high = x;
      }
    }
    assertThat(low).isCloseTo(expected_K, within(band));
  }

  @ParameterizedTest(name = "time constant at {0} m/s: about {1} s (design document)")
  @CsvSource({"0, 540, 27", "3, 120, 8"})
  void timeConstantIsOfTheExpectedSize(double speed, double expected_s, double band) {
    assertThat(balance(0.05).timeConstant_s(POWER_W, speed)).isCloseTo(expected_s, within(band));
  }

  private static HeatBalance balance(double emissivity) {
    Ball ball = new Ball(0.0127, 3.57, emissivity, List.of());
    return new HeatBalance(BallPair.equal(ball), new AirState(293.15, 101_325, 0.5));
  }
}
