package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.plan.Response;
import faintwind.physics.Interval;
import faintwind.physics.SphereConvection;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ExpectedCourseTest {
  /** 400 s in still air, 100 s at 1 m/s, 30 K in still air; 2 mV for each kelvin. */
  private static final ExpectedCourse COURSE =
      ExpectedCourse.before(new Response(Interval.exact(400), Interval.exact(100), 30, 0.02, 1), 2);

  @Test
  @DisplayName(
      "A ball of 12.7 mm in 300 K air between 0.3 and 3 m/s, Re 237.4 and 2374.5: what moves with"
          + " the air grows as by S. Whitaker, AIChE J. 18 (1972) 361")
  void movingAirCoolsAsASphereDoes() {
    double slow = SphereConvection.whitaker(237.4, 0.707, 1).value() - 2;
    double fast = SphereConvection.whitaker(2374.5, 0.707, 1).value() - 2;
    double forced = (COURSE.rate_1_s(3) - 1 / 400.0) / (COURSE.rate_1_s(0.3) - 1 / 400.0);
    assertThat(forced / (fast / slow)).isCloseTo(1, within(0.01));
  }

  /** By hand: 1/400 + (1/100 − 1/400)·2^1.1 = 0.0025 + 0.0075·2.14355 = 0.018577 1/s at 4 m/s. */
  @Test
  void rateAndEndAreAsWorkedByHand() {
    assertThat(COURSE.rate_1_s(0)).isCloseTo(0.0025, within(1e-12));
    assertThat(COURSE.rate_1_s(1)).isCloseTo(0.01, within(1e-12));
    assertThat(COURSE.rate_1_s(4)).isCloseTo(0.018577, within(1e-6));
    assertThat(COURSE.settled(0)).isCloseTo(60, within(1e-9));
    assertThat(COURSE.settled(1)).isCloseTo(15, within(1e-9));
    // a time constant after the start: 1 − 1/e = 0.632121 of the way from 60 to 15
    assertThat(COURSE.after(60, 1, 100)).isCloseTo(60 - 45 * 0.632121, within(1e-4));
  }

  @Test
  void offsetIsNoHeat() {
    ExpectedCourse shifted = COURSE.from(5);
    assertThat(shifted.settled(0)).isCloseTo(65, within(1e-9));
    assertThat(shifted.after(65, 0, 1000)).isCloseTo(65, within(1e-9));
    // seen: 45 above the offset after a time constant of 500 s
    assertThat(shifted.warmedUp(50, 500).settled(0)).isCloseTo(50, within(1e-9));
    assertThat(shifted.warmedUp(50, 500).rate_1_s(0)).isCloseTo(0.002, within(1e-12));
  }

  /** Still air and moving air follow the same heat capacity. */
  @Test
  void aSlowerWarmUpSlowsTheSpinsAsMuch() {
    ExpectedCourse seen = COURSE.warmedUp(60, 500);
    assertThat(seen.rate_1_s(4) / COURSE.rate_1_s(4)).isCloseTo(0.8, within(1e-9));
  }

  /** At 4 m/s settled at 10: rate 0.15/10 = 0.015, forced 0.0125/2.14355 = 5.8315e-3; half way. */
  @Test
  void aSpinIsBelievedHalf() {
    ExpectedCourse spun = COURSE.spun(4, 10);
    assertThat(spun.forced()).isCloseTo((0.0075 + 5.8315e-3) / 2, within(1e-7));
    assertThat(spun.settled(0)).isCloseTo(60, within(1e-9));
  }

  @Test
  void whatCannotBeIsNotLearned() {
    assertThat(COURSE.warmedUp(0, 500)).isEqualTo(COURSE);
    assertThat(COURSE.spun(1, 70)).as("warmer than still air").isEqualTo(COURSE);
    assertThat(COURSE.spun(1, -15)).as("the other way").isEqualTo(COURSE);
    assertThat(COURSE.spun(0, 15)).as("no speed").isEqualTo(COURSE);
    // no more than three times or a third of what was expected, however it looks
    assertThat(COURSE.warmedUp(60, 5).rate_1_s(0)).isCloseTo(3 * 0.0025, within(1e-12));
    assertThat(COURSE.warmedUp(60, 5e4).rate_1_s(0)).isCloseTo(0.0025 / 3, within(1e-12));
    assertThat(COURSE.spun(1, 0.1).forced()).isCloseTo(2 * 0.0075, within(1e-12));
  }

  @Test
  void aCourseWithoutHeatOrLossIsRefused() {
    assertThatThrownBy(() -> new ExpectedCourse(0, 0, 1, 1)).hasMessageContaining("heating");
    assertThatThrownBy(() -> new ExpectedCourse(0, 1, 0, 1)).hasMessageContaining("still_1_s");
    assertThatThrownBy(() -> new ExpectedCourse(0, 1, 1, 0)).hasMessageContaining("forced");
  }
}
