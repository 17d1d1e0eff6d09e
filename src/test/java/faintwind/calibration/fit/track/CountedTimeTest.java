package faintwind.calibration.fit.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** By hand: ten turns of ten seconds, a run-up with a time constant of 4 s. */
class CountedTimeTest {
  private static final CountedTime NOTED = new CountedTime(100, 10, OptionalDouble.of(3), 0);
  private static final CountedTime NOT_NOTED =
      new CountedTime(100, 10, OptionalDouble.empty(), 0.25);

  @Test
  void fullSpeedIsMoreByTheTimeLost() {
    assertThat(NOTED.gain(2)).isCloseTo(100 / 98.0, within(1e-12));
    assertThat(NOTED.gain(0)).isEqualTo(1);
    assertThat(NOTED.gain(90)).isEqualTo(2);
    assertThat(CountedTime.NONE.gain(2)).isEqualTo(1);
  }

  /** A click 3 s after a start that came 1 s late: 4 exp(-2/4). */
  @Test
  void aNotedClickLosesWhatTheRampHasLeft() {
    assertThat(NOTED.lost_s(4, 1, 0.7)).isCloseTo(4 * Math.exp(-0.5), within(1e-12));
    assertThat(NOTED.lost_s(4, 3, 0.7)).isCloseTo(4, within(1e-12));
    assertThat(NOTED.lost_s(4, 5, 0.7)).isCloseTo(6, within(1e-12));
  }

  /** From rest by half a belief: 4 (1/2 + 1/2 · 1/4). */
  @Test
  void otherwiseItIsBetweenBothHabits() {
    assertThat(NOT_NOTED.lost_s(4, 1, 0.5)).isCloseTo(2.5, within(1e-12));
    assertThat(NOT_NOTED.lost_s(4, 1, 1)).isEqualTo(4);
    assertThat(NOT_NOTED.lost_s(4, 1, 0)).isEqualTo(1);
  }

  @Test
  void slopesAreThoseOfDifferences() {
    double h = 1e-5;
    for (CountedTime count : new CountedTime[] {NOTED, NOT_NOTED}) {
      for (double delay : new double[] {1, 5}) {
        assertThat(count.byRunUp(4, delay, 0.3))
            .isCloseTo(
                (count.lost_s(4 + h, delay, 0.3) - count.lost_s(4 - h, delay, 0.3)) / (2 * h),
                within(1e-8));
        assertThat(count.byDelay(4, delay))
            .isCloseTo(
                (count.lost_s(4, delay + h, 0.3) - count.lost_s(4, delay - h, 0.3)) / (2 * h),
                within(1e-8));
        assertThat(count.byFromRest(4))
            .isCloseTo(
                (count.lost_s(4, delay, 0.3 + h) - count.lost_s(4, delay, 0.3 - h)) / (2 * h),
                within(1e-8));
      }
    }
  }

  @Test
  void aTurnIsHeldAgainstFiveSeconds() {
    assertThat(NOTED.logTurn()).isCloseTo(Math.log(2), within(1e-12));
    assertThat(CountedTime.NONE.logTurn()).isZero();
  }

  /** 1 - exp(-t/T); beyond nine times T it is done. */
  @Test
  void aRampGoesToOne() {
    assertThat(Turn.ramp(-1, 2)).isZero();
    assertThat(Turn.ramp(2, 2)).isCloseTo(1 - Math.exp(-1), within(1e-12));
    assertThat(Turn.ramp(18.1, 2)).isEqualTo(1);
    assertThat(Turn.ramp(17.9, 2)).isLessThan(1);
    assertThat(Turn.rampSlope(2, 2)).isCloseTo(Math.exp(-1) / 2, within(1e-12));
    assertThat(Turn.rampSlope(-1, 2)).isZero();
    assertThat(Turn.rampSlope(18.1, 2)).isZero();
  }
}
