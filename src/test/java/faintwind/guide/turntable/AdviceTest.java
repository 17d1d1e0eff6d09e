package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.run.Series;
import faintwind.guide.turntable.Advice.Action;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class AdviceTest {
  /** The program never does by itself what a hand does: switch, turn, stop. */
  @Test
  void theGuideWaitsForAHandThreeTimes() {
    assertThat(Arrays.stream(Action.values()).filter(Action::waits))
        .containsExactly(Action.SWITCH_ON, Action.SPIN_NOW, Action.STOP);
  }

  @Test
  void wordsHaveTheirKeys() {
    assertThat(Action.KEEP_OFF.key()).isEqualTo("live-guide.keep-off");
    assertThat(Trouble.Kind.WRONG_WAY.key()).isEqualTo("live-guide.trouble.wrong-way");
  }

  /** 60 in still air, 15 at 1 m/s: an hour off stays at the offset, a spin comes down. */
  @Test
  void thePathAheadFollowsTheSteps() {
    ExpectedCourse course = new ExpectedCourse(2, 0.15, 0.0025, 0.0075);
    Plan plan = VirtualTable.plan(1.0);
    ExpectedPath off = new ExpectedPath(course, 10, 2, 30);
    off.go(plan.steps().get(0), 95);
    Series still = off.series();
    assertThat(still.size()).isEqualTo(5);
    assertThat(still.time_s(4)).isCloseTo(105, within(1e-9));
    assertThat(still.value(4)).isEqualTo(2);
    ExpectedPath on = new ExpectedPath(course, 0, 2, 100);
    on.go(plan.steps().get(1), 10_000);
    assertThat(on.series().value(100)).isCloseTo(62, within(1e-6));
    on.go(plan.steps().get(2), 5000);
    double speed_m_s = plan.steps().get(2).spin().orElseThrow().speed_m_s();
    assertThat(on.series().value(150)).isCloseTo(course.settled(speed_m_s), within(1e-6));
  }
}
