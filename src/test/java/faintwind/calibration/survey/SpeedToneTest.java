package faintwind.calibration.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SpeedToneTest {
  private final SpeedTone tone = new SpeedTone(0.1, 3.2);

  private static SpeedRow row(double speed_m_s, SpeedFlag... flags) {
    return new SpeedRow(OptionalDouble.of(speed_m_s), OptionalDouble.of(0.02), Set.of(flags));
  }

  @Test
  void pitchRisesWithSpeedFromEndToEnd() {
    assertThat(tone.pitch_Hz(row(0.1)).orElseThrow()).isCloseTo(220, within(1e-6));
    assertThat(tone.pitch_Hz(row(3.2)).orElseThrow()).isCloseTo(8 * 220, within(1e-6));
    double before = 0;
    for (double v = 0.1; v <= 3.2; v *= 1.05) {
      double now = tone.pitch_Hz(row(v)).orElseThrow();
      assertThat(now).isGreaterThan(before);
      before = now;
    }
  }

  @Test
  void equalRatiosOfSpeedAreEqualStepsOfPitch() {
    double low = tone.pitch_Hz(row(0.4)).orElseThrow() / tone.pitch_Hz(row(0.2)).orElseThrow();
    double high = tone.pitch_Hz(row(2.0)).orElseThrow() / tone.pitch_Hz(row(1.0)).orElseThrow();
    assertThat(low).isCloseTo(high, within(1e-9));
  }

  @Test
  void beyondTheCalibratedSpeedsItIsThatOfTheNearest() {
    assertThat(tone.pitch_Hz(row(9, SpeedFlag.ABOVE))).isEqualTo(tone.pitch_Hz(row(3.2)));
    assertThat(tone.pitch_Hz(row(0.05))).isEqualTo(tone.pitch_Hz(row(0.1)));
  }

  @Test
  void nothingSoundsWithoutASpeedThatMeansSomething() {
    assertThat(tone.pitch_Hz(SpeedRow.BAD)).isEmpty();
    for (SpeedFlag flag : Set.of(SpeedFlag.WARMUP, SpeedFlag.POWER, SpeedFlag.FLOOR)) {
      assertThat(tone.pitch_Hz(row(0.3, flag))).as(flag.word()).isEmpty();
    }
  }
}
