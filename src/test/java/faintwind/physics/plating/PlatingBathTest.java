package faintwind.physics.plating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlatingBathTest {
  private static final double BALL_M2 = Math.PI * 0.0127 * 0.0127;

  @Test
  @DisplayName("2 A, 30 min, 95 %, 1 dm²: 1.04 g and 11.7 µm (an electroplating calculator page)")
  void nickelExampleOfACalculatorPage() {
    PlatingBath bath = new PlatingBath(Deposit.NICKEL, 0.01, 200, 0.95);
    double thickness_m = bath.thickness_m(1800);
    assertThat(1e6 * thickness_m).isCloseTo(11.7, within(0.06));
    assertThat(1e3 * bath.mass_kg(thickness_m)).isCloseTo(1.04, within(0.005));
  }

  @Test
  @DisplayName("12.7 mm ball, 5 µm nickel at 2 A/dm²: 101.3 mA, 12.20 min (recomputed)")
  void currentAndTimeOfABall() {
    PlatingBath bath = new PlatingBath(Deposit.NICKEL, BALL_M2, 200, 1);
    assertThat(1e3 * bath.current_A()).isCloseTo(101.3, within(0.1));
    assertThat(bath.time_s(5e-6) / 60).isCloseTo(12.20, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.95, 1})
  void timeAndThicknessAreInverse(double efficiency) {
    PlatingBath bath = new PlatingBath(Deposit.GOLD, BALL_M2, 50, efficiency);
    assertThat(bath.thickness_m(bath.time_s(0.7e-6))).isCloseTo(0.7e-6, within(1e-15));
  }

  @Test
  void triplyChargedGoldTakesThreeTimesAsLong() {
    PlatingBath one = new PlatingBath(Deposit.GOLD, BALL_M2, 50, 1);
    PlatingBath three = new PlatingBath(Deposit.GOLD_III, BALL_M2, 50, 1);
    assertThat(three.time_s(1e-6) / one.time_s(1e-6)).isCloseTo(3, within(1e-12));
  }

  @Test
  void anEfficiencyAboveOneIsRefused() {
    assertThatThrownBy(() -> new PlatingBath(Deposit.NICKEL, 0.01, 100, 1.2))
        .hasMessageContaining("efficiency 1.2");
  }

  @Test
  void nothingToPlateWithOrOnIsRefused() {
    assertThatThrownBy(() -> new PlatingBath(Deposit.NICKEL, 0, 100, 1))
        .hasMessageContaining("area 0.0");
    assertThatThrownBy(() -> new PlatingBath(Deposit.NICKEL, 0.01, 0, 1))
        .hasMessageContaining("density 0.0");
    assertThatThrownBy(() -> new PlatingBath(Deposit.NICKEL, 0.01, 100, 0))
        .hasMessageContaining("efficiency 0.0");
  }

  /** Half of 1000 C gives 0.5·1000/(2·96485) = 2.591 mmol, at 293.15 K and 1 bar 63.15 mL. */
  @Test
  void theChargeThatDepositsNoMetalGivesHydrogen() {
    assertThat(1e6 * Hydrogen.volume_m3(1000, 0.5, 293.15, 1e5)).isCloseTo(63.15, within(0.01));
    assertThat(Hydrogen.volume_m3(1000, 1, 293.15, 1e5)).isZero();
  }
}
