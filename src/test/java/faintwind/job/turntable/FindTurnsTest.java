package faintwind.job.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.BeatTrack;
import faintwind.calibration.plan.Beat;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program's own beat, recorded, gives the turns it was made for. */
class FindTurnsTest {
  private static final int RATE_HZ = 16_000;
  private static final int LENGTH_S = 61;
  private static final Beat BEAT = new Beat(64, 4);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void recordedBeatGivesItsTurns() throws IOException {
    BeatTimes times = value(FindTurns.in(recording(beat()), BEAT));
    assertThat(times.missed()).isZero();
    assertThat(times.doubled()).isZero();
    assertThat(times.turning().turns()).isEqualTo(16);
    assertThat(times.turning().time_s().value()).isCloseTo(60, within(0.005));
  }

  @Test
  void missedAndDoubledClicksAreShownAndTheCountStays() throws IOException {
    float[] sound = beat();
    BeatTrack track = new BeatTrack(BEAT, RATE_HZ, 0);
    int gone = (int) track.sampleOf(21);
    Arrays.fill(sound, gone, gone + RATE_HZ / 20, 0);
    int twin = (int) track.sampleOf(40);
    System.arraycopy(sound, twin, sound, twin + RATE_HZ / 4, RATE_HZ / 20);
    Checked<BeatTimes> found = FindTurns.in(recording(sound), BEAT);
    assertThat(found.problems())
        .extracting(Problem::id)
        .containsExactlyInAnyOrder("beat.missed", "beat.doubled");
    assertThat(value(found).turning().turns()).isEqualTo(16);
  }

  @Test
  void recordingWithoutClicksIsRefused() throws IOException {
    assertThat(FindTurns.in(recording(new float[RATE_HZ * 5]), BEAT).problems())
        .extracting(Problem::id)
        .containsExactly("beat.too-few");
  }

  private static float[] beat() {
    return new BeatTrack(BEAT, RATE_HZ, 0).samples(0, RATE_HZ * LENGTH_S);
  }

  private Path recording(float[] samples) throws IOException {
    byte[] bytes = new byte[2 * samples.length];
    for (int i = 0; i < samples.length; i++) {
      int value = Math.round(samples[i] * 20_000);
      bytes[2 * i] = (byte) value;
      bytes[2 * i + 1] = (byte) (value >> 8);
    }
    AudioFormat format = new AudioFormat(RATE_HZ, 16, 1, true, false);
    Path file = folder.resolve("beat.wav");
    try (AudioInputStream sound =
        new AudioInputStream(new ByteArrayInputStream(bytes), format, samples.length)) {
      AudioSystem.write(sound, AudioFileFormat.Type.WAVE, file.toFile());
    }
    assertThat(Files.size(file)).isGreaterThan(bytes.length);
    return file;
  }

  private static BeatTimes value(Checked<BeatTimes> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }
}
