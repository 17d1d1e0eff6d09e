package faintwind.calibration.beat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ToneTrackTest {
  private static final int RATE_HZ = 44_100;
  private final ToneTrack track = new ToneTrack(RATE_HZ);

  private static double most(float[] samples) {
    double most = 0;
    for (float sample : samples) {
      most = Math.max(most, Math.abs(sample));
    }
    return most;
  }

  /** Half the changes of sign a second. */
  private static double pitch_Hz(float[] samples) {
    int changes = 0;
    for (int i = 1; i < samples.length; i++) {
      changes += samples[i - 1] < 0 != samples[i] < 0 ? 1 : 0;
    }
    return changes / 2.0 * RATE_HZ / samples.length;
  }

  @Test
  void itIsSilentUntilItHasAPitchAndAgainWithoutOne() {
    assertThat(most(track.samples(0, 1000))).isZero();
    track.pitch(OptionalDouble.of(440));
    track.samples(0, RATE_HZ);
    float[] sounding = track.samples(0, RATE_HZ);
    assertThat(most(sounding)).isGreaterThan(0.2);
    assertThat(pitch_Hz(sounding)).isCloseTo(440, within(1.0));
    track.pitch(OptionalDouble.empty());
    track.samples(0, RATE_HZ / 10);
    assertThat(most(track.samples(0, 1000))).isZero();
  }

  @Test
  void aNewPitchDoesNotClick() {
    track.pitch(OptionalDouble.of(220));
    float last = track.samples(0, RATE_HZ)[RATE_HZ - 1];
    track.pitch(OptionalDouble.of(1760));
    float[] after = track.samples(0, RATE_HZ);
    // no step is larger than that of the new pitch: 2 π f · loudness / rate
    double largest = 2 * Math.PI * 1760 * 0.25 / RATE_HZ;
    for (float sample : after) {
      assertThat(Math.abs(sample - last)).isLessThanOrEqualTo((float) (1.01 * largest));
      last = sample;
    }
    assertThat(pitch_Hz(track.samples(0, RATE_HZ))).isCloseTo(1760, within(2.0));
  }
}
