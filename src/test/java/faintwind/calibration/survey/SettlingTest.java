package faintwind.calibration.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Coverage;
import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.TestCalibration;
import faintwind.calibration.speed.UsualAverage;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: three time constants of 500 and 200 s, and an average of 30 s. */
class SettlingTest {
  @Test
  void oneWaitsThreeTimeConstantsAndAnAverage() {
    Settling settling = new Settling(500, 200, 30);
    assertThat(settling.atMost_s()).isEqualTo(1530);
    assertThat(settling.moving_s()).isEqualTo(630);
    LiveStay stay =
        new LiveStay(
            settling, new StretchMean.How(30, SharedPart.unknown(), StretchMean.Of.THIS_TIME));
    assertThat(stay.atMost_s()).isEqualTo(1530);
    assertThat(stay.moving_s()).isEqualTo(630);
  }

  @Test
  void aTypedWaitIsKept() {
    assertThat(Settling.typed(600).atMost_s()).isCloseTo(600, within(1e-9));
    assertThat(Settling.typed(600).moving_s()).isCloseTo(600, within(1e-9));
    assertThat(Settling.typed(600).average_s()).isEqualTo(300);
  }

  @Test
  void movingAirIsQuickerThanStill() {
    Settling settling = Settling.of(TestCalibration.ofModel());
    assertThat(settling.movingTime_s()).isLessThan(settling.stillTime_s());
    assertThat(settling.average_s()).isEqualTo(UsualAverage.of(TestCalibration.ofModel()));
  }

  private static Coverage coverage(double lowest_m_s, double highest_m_s) {
    return new Coverage(lowest_m_s, highest_m_s, 5, 30, true, Optional.empty());
  }

  @Test
  void aToneGoesOverTheCalibratedSpeeds() {
    assertThat(SpeedTone.over(coverage(0.1, 3))).isEqualTo(new SpeedTone(0.1, 3));
    assertThat(SpeedTone.over(coverage(0.1, 0.1))).isEqualTo(new SpeedTone(0.1, 0.2));
    assertThat(SpeedTone.over(coverage(0, 1))).isEqualTo(new SpeedTone(1e-3, 1));
    assertThatThrownBy(() -> new SpeedTone(1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SpeedTone(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
