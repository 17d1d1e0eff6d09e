package faintwind.calibration.beat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClickFinderTest {
  private static final double NEAR_S = 0.005;

  /**
   * tone 0: a click of noise. Speech: share of the time, level against the click (0.32: 10 dB
   * below).
   */
  @Tag("long")
  @ParameterizedTest(name = "{0} Hz, every {1} s, tone {2} Hz, speech {3} at {4}, seed {5}")
  @CsvSource({
    "44100, 0.47, 0, 0.2, 0.5, 1",
    "22050, 0.94, 1600, 0.2, 0.5, 2",
    "16000, 0.94, 0, 0.3, 0.5, 3",
    "8000, 1.25, 2000, 0.2, 0.32, 4",
    "8000, 3.7, 1200, 0.3, 0.32, 6",
    "11025, 2, 0, 0.2, 1, 7",
    "96000, 0.5, 3000, 0, 1, 8"
  })
  void ninetyNineOfAHundredAreFoundWithinFiveMillisecondsAtTenDecibels(
      int rate_Hz, double period_s, double tone_Hz, double share, double level, long seed) {
    foundUnderNoise(rate_Hz, period_s, tone_Hz, share, level, seed);
  }

  /** The same where it takes a second: every test run looks at these. */
  @ParameterizedTest(name = "{0} Hz, every {1} s, tone {2} Hz, speech {3} at {4}, seed {5}")
  @CsvSource({"8000, 0.6, 0, 0.2, 0.5, 5", "8000, 0.45, 2000, 0.2, 0.32, 11"})
  void ninetyNineOfAHundredAreFoundInSoundOfEightThousandASecond(
      int rate_Hz, double period_s, double tone_Hz, double share, double level, long seed) {
    foundUnderNoise(rate_Hz, period_s, tone_Hz, share, level, seed);
  }

  private static void foundUnderNoise(
      int rate_Hz, double period_s, double tone_Hz, double share, double level, long seed) {
    double length_s = 200 * period_s;
    SoundScene scene =
        new SoundScene(rate_Hz, length_s, seed).clicks(period_s, 0.02 * period_s, tone_Hz);
    scene.noise(10).hum(50);
    if (share > 0) {
      scene.speech(share, level);
    }
    ClickFinder.Found found = heard(scene, rate_Hz);
    double share_found = share(scene.clicks(), found.clicks());
    double share_true = share(found.clicks(), scene.clicks());
    assertThat(share_found).isGreaterThanOrEqualTo(0.99);
    assertThat(share_true).isGreaterThanOrEqualTo(0.99);
    // each click is off by 2 % of the period, so the median of 199 gaps by 1.25 · 2.8 % / √199
    assertThat(found.period_s()).isCloseTo(period_s, within(3 * 0.0025 * period_s));
  }

  @Test
  void doubledClickIsSetAsideAndAKnockToo() {
    SoundScene scene = new SoundScene(16_000, 60, 9).clicks(1, 0.01, 0).click(20.3, 0);
    ClickFinder.Found found = heard(scene.noise(10), 16_000);
    assertThat(found.setAside()).hasSize(1);
    assertThat(found.setAside().get(0)).isBetween(20.29, 20.31);
    assertThat(found.clicks()).hasSize(59);
  }

  @Test
  void silenceHasNoClicks() {
    ClickFinder finder = new ClickFinder(44_100);
    finder.hear(new float[441_000], 441_000);
    assertThat(finder.find(OptionalDouble.empty()).clicks()).isEmpty();
  }

  private static ClickFinder.Found heard(SoundScene scene, int rate_Hz) {
    ClickFinder finder = new ClickFinder(rate_Hz);
    finder.hear(scene.samples(), scene.samples().length);
    return finder.find(OptionalDouble.empty());
  }

  private static double share(List<Double> wanted, List<Double> there) {
    return (double)
            wanted.stream()
                .filter(w -> there.stream().anyMatch(t -> Math.abs(t - w) <= NEAR_S))
                .count()
        / wanted.size();
  }
}
