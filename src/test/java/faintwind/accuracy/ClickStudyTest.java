package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.beat.BeatTimes;
import faintwind.job.turntable.FindTurns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Turns counted in sounds that the counter was not made with ({@link SpinSound}): every one that is
 * accepted is right within 0.3 %, and within its own U95 in 95 of 100. What is refused is counted
 * too, so that nothing is won by refusing.
 */
class ClickStudyTest {
  private static final double RIGHT = 0.003;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  /** How many were accepted, and how many of those were right and covered. */
  private record Score(int drawn, int accepted, int right, int covered, double worst) {
    static final Score NONE = new Score(0, 0, 0, 0, 0);

    Score and(double off, double u95) {
      return new Score(
          drawn + 1,
          accepted + 1,
          right + (Math.abs(off) <= RIGHT ? 1 : 0),
          covered + (Math.abs(off) <= u95 ? 1 : 0),
          Math.max(worst, Math.abs(off)));
    }

    Score refused() {
      return new Score(drawn + 1, accepted, right, covered, worst);
    }
  }

  @Test
  void quickSoundsAreCountedRight() throws IOException {
    Score score = over(SpinSound::spoken, 8, 14, 24);
    assertThat(score.accepted()).isEqualTo(3);
    assertThat(score.right()).isEqualTo(3);
  }

  @Test
  void speechWithoutClicksIsRefused() throws IOException {
    Path file = folder.resolve("speech.wav");
    SpinSound.speechAlone(8).writeTo(file);
    assertThat(FindTurns.in(file, OptionalDouble.empty(), 1).isOk()).isFalse();
  }

  @Test
  @Tag("long")
  void soundsWithSpeechAtFourDecibels() throws IOException {
    judge("speech at 4 dB", over(SpinSound::spoken, seeds(1, 40)));
  }

  @Test
  @Tag("long")
  void soundsWithoutSpeech() throws IOException {
    judge("no speech", over(SpinSound::quiet, seeds(101, 40)));
  }

  @Test
  @Tag("long")
  void speechAloneIsNeverCounted() throws IOException {
    Score score = over(SpinSound::speechAlone, seeds(1, 40));
    assertThat(score.accepted()).isZero();
  }

  private static void judge(String name, Score score) {
    System.out.println(name + ": " + score);
    assertThat(score.right()).isEqualTo(score.accepted());
    assertThat(score.covered()).isGreaterThanOrEqualTo((int) Math.floor(0.95 * score.accepted()));
    assertThat(score.accepted()).isGreaterThanOrEqualTo((int) (0.8 * score.drawn()));
  }

  private static long[] seeds(int first, int count) {
    return LongStream.range(first, first + count).toArray();
  }

  private Score over(LongFunction<SpinSound> drawing, long... seeds) throws IOException {
    Score score = Score.NONE;
    for (long seed : seeds) {
      SpinSound sound = drawing.apply(seed);
      Path file = folder.resolve("sound.wav");
      sound.writeTo(file);
      Checked<BeatTimes> found = FindTurns.in(file, OptionalDouble.empty(), 1);
      if (found instanceof Checked.Ok<BeatTimes> ok) {
        BeatTimes.Turning turning = ok.value().turning();
        double time_s = turning.time_s().value();
        double off = turning.turns() / time_s / sound.turnsPerSecond() - 1;
        double u95 = 2 * turning.time_s().u().orElse(0) / time_s;
        score = score.and(off, u95);
        if (Math.abs(off) > Math.min(RIGHT, u95)) {
          System.out.printf(
              "seed %d: off %.3f %%, U95 %.3f %%; %s%n", seed, 100 * off, 100 * u95, sound);
        }
      } else {
        score = score.refused();
        Problem why = found.problems().get(0);
        System.out.println("seed " + seed + ": refused, " + why.id() + "; " + sound);
      }
    }
    return score;
  }
}
