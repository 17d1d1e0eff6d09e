package faintwind.calibration.beat;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.plan.Beat;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeatTrackTest {
  private static final double TEN_MINUTES_S = 600;
  private static final int PIECE = 4096;

  /** Starts of clicks measured from the samples: where silence ends. */
  @ParameterizedTest(name = "{0} beats a minute at {1} Hz")
  @CsvSource({"64, 44100", "57, 44100", "97, 48000", "113, 8000", "44, 22050"})
  void beatDriftsLessThanAMillisecondInTenMinutes(int beatsPerMinute, int rate_Hz) {
    BeatTrack track = new BeatTrack(new Beat(beatsPerMinute, 4), rate_Hz, 4);
    double worst_s = 0;
    int beat = 0;
    long silent = Long.MAX_VALUE / 2;
    for (long from = 0; from < (long) ((TEN_MINUTES_S + 0.05) * rate_Hz); from += PIECE) {
      float[] piece = track.samples(from, PIECE);
      for (int i = 0; i < PIECE; i++) {
        if (Math.abs(piece[i]) < 1e-6) {
          silent++;
          continue;
        }
        if (silent > rate_Hz / 20) {
          double off_s = (double) (from + i) / rate_Hz - beat * 60.0 / beatsPerMinute;
          worst_s = Math.max(worst_s, Math.abs(off_s));
          beat++;
        }
        silent = 0;
      }
    }
    // the last of these starts ten minutes after the first
    assertThat(beat).isEqualTo(beatsPerMinute * 10 + 1);
    assertThat(worst_s).isLessThan(0.001);
  }

  @ParameterizedTest(name = "cut at {0}")
  @CsvSource({"1", "1000", "41343", "41344", "41345"})
  void samplesDoNotDependOnHowTheyAreCut(int cut) {
    BeatTrack track = new BeatTrack(new Beat(64, 4), 44_100, 4);
    float[] whole = track.samples(0, 90_000);
    float[] first = track.samples(0, cut);
    float[] rest = track.samples(cut, 90_000 - cut);
    float[] joined = new float[90_000];
    System.arraycopy(first, 0, joined, 0, cut);
    System.arraycopy(rest, 0, joined, cut, rest.length);
    assertThat(joined).containsExactly(whole);
  }
}
