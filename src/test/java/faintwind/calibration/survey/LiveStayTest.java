package faintwind.calibration.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.SpeedRow;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LiveStayTest {
  private static final StretchMean.How HOW =
      new StretchMean.How(20, SharedPart.unknown(), StretchMean.Of.THE_PLACE);

  /** Waits 3 · 20 s + 10 s = 70 s where the air moves. */
  private final LiveStay stay = new LiveStay(new Settling(60, 20, 10), HOW);

  private void read(double from_s, double to_s, double speed_m_s) {
    for (double t = from_s; t <= to_s; t++) {
      stay.take(t, new SpeedRow(OptionalDouble.of(speed_m_s), OptionalDouble.of(0.01), Set.of()));
    }
  }

  @Test
  void nothingIsKnownBeforeTheFirstRow() {
    assertThat(stay.look("door")).isEmpty();
  }

  @Test
  void itSettlesAfterTheWaitAndOneMoreAverage() {
    read(0, 60, 0.3);
    assertThat(stay.look("door").orElseThrow().settled()).isFalse();
    read(61, 80, 0.3);
    assertThat(stay.look("door").orElseThrow().settled()).isFalse();
    read(81, 100, 0.3);
    LiveStay.Look look = stay.look("door").orElseThrow();
    assertThat(look.settled()).isTrue();
    assertThat(look.since_s()).isEqualTo(100);
    assertThat(look.visit().speed().orElseThrow().speed_m_s()).isCloseTo(0.3, within(1e-12));
  }

  @Test
  void anArrivalForgetsThePlaceBefore() {
    read(0, 200, 0.3);
    stay.arrive();
    assertThat(stay.look("hatch")).isEmpty();
    read(300, 340, 0.1);
    assertThat(stay.look("hatch").orElseThrow().settled()).isFalse();
    read(341, 400, 0.1);
    LiveStay.Look look = stay.look("hatch").orElseThrow();
    assertThat(look.settled()).isTrue();
    assertThat(look.visit().speed().orElseThrow().speed_m_s()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void aSpeedThatGoesOnRisingHasNotSettled() {
    for (int t = 0; t <= 160; t++) {
      read(t, t, 0.1 + 0.002 * t);
    }
    assertThat(stay.look("door").orElseThrow().settled()).isFalse();
  }
}
