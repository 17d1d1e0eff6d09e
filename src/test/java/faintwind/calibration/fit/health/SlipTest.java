package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** By hand: ln 1.1 = 0.0953 and ln 1.11 = 0.1044, on both sides of the tenth that is near. */
class SlipTest {
  @Test
  void speedsWithinATenthOnTheLogarithmAreNear() {
    assertThat(Slip.isNear(1.1, 1)).isTrue();
    assertThat(Slip.isNear(1, 1.1)).isTrue();
    assertThat(Slip.isNear(1.11, 1)).isFalse();
    assertThat(Slip.isNear(1, 1.11)).isFalse();
  }

  @Test
  void eachSlipIsFoundFromItsFactor() {
    for (Slip slip : Slip.values()) {
      assertThat(Slip.near(1.05 * slip.factor())).contains(slip);
    }
    assertThat(Slip.near(1)).isEmpty();
    assertThat(Slip.near(1.5)).isEmpty();
  }

  /** 25.4 mm are an inch; inches read as millimetres make a speed that much smaller. */
  @Test
  void inchesForMillimetresAreASlip() {
    assertThat(Slip.near(0.0394)).contains(Slip.INCH);
    assertThat(Slip.INCH.factor() * 25.4).isCloseTo(1, within(1e-12));
    assertThat(Slip.HALF.factor()).isEqualTo(0.5);
    assertThat(Slip.HALF.id()).isEqualTo("half");
  }
}
