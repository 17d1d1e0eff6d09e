package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.guide.StepClock.Stand;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;

class StepClockTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-28T23:00:00+01:00");

  @Test
  void itRunsOnWhileNobodyLooks() {
    StepClock clock = new StepClock(START, 3600, START.plusMinutes(40));
    assertThat(clock.stand()).isEqualTo(Stand.RUNNING);
    assertThat(clock.left_s()).isEqualTo(1200);
    assertThat(clock.share()).isCloseTo(2.0 / 3, within(1e-12));
  }

  @Test
  void itEndsOnTheSecondAndSaysHowLate() {
    assertThat(new StepClock(START, 3600, START.plusMinutes(60)).stand()).isEqualTo(Stand.ENDED);
    StepClock late = new StepClock(START, 3600, START.plusHours(3));
    assertThat(late.late_s()).isEqualTo(7200);
    assertThat(late.left_s()).isZero();
  }

  @Test
  void theChangeToSummerTimeDoesNotShortenTheCure() {
    // 24 h after 23:00 winter time is midnight by the summer clock of the next evening
    OffsetDateTime wall = OffsetDateTime.parse("2026-03-29T23:00:00+02:00");
    StepClock clock = new StepClock(START, 86_400, wall);
    assertThat(clock.stand()).isEqualTo(Stand.RUNNING);
    assertThat(clock.left_s()).isEqualTo(3600);
  }

  @Test
  void aComputerClockSetBackEndsNothing() {
    StepClock clock = new StepClock(START, 3600, START.minusDays(400));
    assertThat(clock.stand()).isEqualTo(Stand.TIME_SET_BACK);
    assertThat(clock.left_s()).isEqualTo(3600);
    assertThat(clock.late_s()).isZero();
  }

  @Test
  void aNegativeDurationIsRefused() {
    assertThatThrownBy(() -> new StepClock(START, -1, START))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
