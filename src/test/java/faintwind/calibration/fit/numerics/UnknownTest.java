package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.Uncertain;
import org.junit.jupiter.api.Test;

/** By hand: 4 ± 2, straight and by its logarithm, and what may be nothing but not less. */
class UnknownTest {
  private static final Unknown STRAIGHT = Unknown.linear("a", 4, 2);
  private static final Unknown POSITIVE = Unknown.log("a", 4, 0.5);
  private static final Unknown SOFT = Unknown.soft("a", 0.03, 0.02);

  @Test
  void valuesFollowFromTheShape() {
    assertThat(STRAIGHT.value(1.5)).isEqualTo(7);
    assertThat(POSITIVE.value(2)).isCloseTo(4 * Math.E, within(1e-12));
    assertThat(SOFT.value(1)).isCloseTo(0.05, within(1e-9));
    assertThat(SOFT.value(-3)).isBetween(0.0, 0.001);
    assertThat(SOFT.value(-1.5)).isCloseTo(0.003 * Math.log(2), within(1e-12));
  }

  @Test
  void normalIsTheLogarithmOfWhatIsPositive() {
    assertThat(STRAIGHT.normal(1.5)).isEqualTo(7);
    assertThat(POSITIVE.normal(2)).isCloseTo(Math.log(4) + 1, within(1e-12));
    assertThat(SOFT.normal(-3)).isCloseTo(-0.03, within(1e-12));
  }

  @Test
  void slopeAndInverseGoWithTheValue() {
    double h = 1e-6;
    for (Unknown unknown : new Unknown[] {STRAIGHT, POSITIVE, SOFT}) {
      for (double x : new double[] {-2, -0.4, 0, 1.3}) {
        double rise = (unknown.value(x + h) - unknown.value(x - h)) / (2 * h);
        assertThat(unknown.slope(x)).isCloseTo(rise, within(1e-7));
        assertThat(unknown.x(unknown.value(x))).isCloseTo(x, within(1e-6));
      }
    }
  }

  /** A step of 0.4 · 0.5 makes 4 into 4.8: straight in the value; one of -3 bends at the half. */
  @Test
  void aStepGoesStraightInTheValue() {
    assertThat(POSITIVE.value(POSITIVE.stepped(0, 0.4))).isCloseTo(4.8, within(1e-12));
    assertThat(POSITIVE.value(POSITIVE.stepped(0, -0.8))).isCloseTo(2.4, within(1e-12));
    assertThat(POSITIVE.value(POSITIVE.stepped(0, -1))).isCloseTo(2, within(1e-12));
    assertThat(POSITIVE.value(POSITIVE.stepped(0, -3)))
        .isCloseTo(4 * Math.exp(-3 + 1 - Math.log(2)), within(1e-12));
    assertThat(STRAIGHT.stepped(1, 0.4)).isEqualTo(1.4);
  }

  @Test
  void whatOthersShowedTakesThePlace() {
    Unknown expected = POSITIVE.expecting(Uncertain.of(Math.log(9), 0.1));
    assertThat(expected.mean()).isCloseTo(9, within(1e-12));
    assertThat(expected.spread()).isEqualTo(0.1);
    assertThat(STRAIGHT.expecting(Uncertain.of(9)).mean()).isEqualTo(9);
    assertThat(STRAIGHT.expecting(Uncertain.of(9)).spread()).isEqualTo(2);
  }
}
