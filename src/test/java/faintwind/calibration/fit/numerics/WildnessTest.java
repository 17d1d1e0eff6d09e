package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Recordings that are what the problem predicts and a wandering of the strength it expects (seed
 * 5), so that whitened residuals have the square 1; in one of them it is stronger.
 */
class WildnessTest {
  private final RunProblem problem = problem();
  private final double[] start = new double[problem.unknowns().size()];
  private final List<Whitening> expected = expected();

  private static RunProblem problem() {
    List<Run> runs = new ArrayList<>();
    for (String name : List.of("a", "b", "c", "d")) {
      runs.add(MadeRuns.still(name, MadeRuns.series(0, 10, 4000, t -> 25 * -Math.expm1(-t / 450))));
    }
    runs.add(
        MadeRuns.spin(
            "spin",
            MadeRuns.series(0, 10, 1500, WildnessTest::turned),
            MadeRuns.arm(300, 900, 80, 590)));
    Setting setting = Setting.of(MadeRuns.set(runs.toArray(Run[]::new)));
    return new Setup(setting, setting.model(PhysicsShaped.ID)).problem();
  }

  private static double turned(double t_s) {
    return t_s < 300
        ? 25
        : t_s < 900
            ? 12 + 13 * Math.exp(-(t_s - 300) / 150)
            : 25 - 13 * Math.exp(-(t_s - 900) / 400);
  }

  private Track.Rows rows(int track) {
    return problem.tracks().get(track).rows;
  }

  private List<Whitening> expected() {
    problem.integrate(start);
    return IntStream.range(0, problem.tracks().size())
        .mapToObj(k -> Whitening.of(rows(k), problem.course(k), Wander.FIRST))
        .toList();
  }

  /** Puts into each track so many times what is expected. */
  private void wandering(double... times) {
    put(white(times));
  }

  private List<double[]> white(double... times) {
    SplittableRandom random = new SplittableRandom(5);
    List<double[]> white = new ArrayList<>();
    for (int k = 0; k < problem.tracks().size(); k++) {
      double strength = times[k];
      white.add(
          random.doubles(rows(k).size()).map(u -> strength * Math.sqrt(3) * (2 * u - 1)).toArray());
    }
    return white;
  }

  private void put(List<double[]> white) {
    List<double[]> signals = new ArrayList<>();
    for (int k = 0; k < white.size(); k++) {
      double[] signal = expected.get(k).colour(white.get(k));
      for (int i = 0; i < signal.length; i++) {
        signal[i] += problem.predicted(k)[i];
      }
      signals.add(signal);
    }
    problem.replace(signals, new double[0], new double[start.length]);
  }

  private double[] wildness(int track) {
    return Arrays.stream(rows(track).wildness).distinct().toArray();
  }

  private long leftOut(int track) {
    return IntStream.range(0, rows(track).size())
        .filter(i -> rows(track).leftOut[i] && !rows(track).aside[i])
        .count();
  }

  /** 4.7 times as strong: 22 times the square, and no single row of it is left out. */
  @Test
  void aRunThatWandersMuchMoreCountsLessByTheSquare() {
    wandering(1, 4.7, 1, 1, 1);
    Wildness.settle(problem, Wander.FIRST);
    assertThat(wildness(1)).hasSize(1);
    assertThat(wildness(1)[0]).isCloseTo(4.7 * 4.7, within(5.0));
    assertThat(leftOut(1)).isZero();
    for (int k : new int[] {0, 2, 3, 4}) {
      assertThat(wildness(k)).containsExactly(1);
      assertThat(leftOut(k)).isZero();
    }
  }

  /** Its weight is taken off before it is judged again, so that it does not grow. */
  @Test
  void judgedAgainItCountsTheSame() {
    wandering(1, 4, 1, 1, 1);
    Wildness.settle(problem, Wander.FIRST);
    double once = wildness(1)[0];
    Wildness.settle(problem, Wander.FIRST);
    assertThat(wildness(1)[0]).isCloseTo(once, within(0.1 * once));
    wandering(1, 1, 1, 1, 1);
    Wildness.settle(problem, Wander.FIRST);
    assertThat(wildness(1)).containsExactly(1);
  }

  /** A mean square of 2.6 is not wild yet: 4 is. */
  @Test
  void aRunOfHalfMoreCountsWhole() {
    wandering(1, 1.6, 1, 1, 1);
    Wildness.settle(problem, Wander.FIRST);
    assertThat(wildness(1)).containsExactly(1);
  }

  /** Turning is held against turning, and one spin has none to be held against. */
  @Test
  void oneSpinAloneIsNotHeldAgainstRests() {
    wandering(1, 1, 1, 1, 4);
    Wildness.settle(problem, Wander.FIRST);
    List<Wildness.Part> parts = Wildness.parts(problem, Wander.FIRST);
    Wildness.Part turning = parts.stream().filter(Wildness.Part::moved).findFirst().orElseThrow();
    assertThat(turning.square()).isGreaterThan(8);
    assertThat(Arrays.stream(turning.rows().wildness, turning.from(), turning.to()).distinct())
        .containsExactly(1.0);
    assertThat(parts).filteredOn(p -> !p.moved()).hasSizeGreaterThan(4);
  }

  @Test
  void aRowFarOffIsLeftOutUntilTheFitComesNearer() {
    List<double[]> white = white(1, 1, 1, 1, 1);
    white.get(2)[30] = 9;
    white.get(2)[60] = 7;
    put(white);
    Wildness.settle(problem, Wander.FIRST);
    assertThat(rows(2).leftOut[30]).isTrue();
    assertThat(leftOut(2)).isEqualTo(1);
    wandering(1, 1, 1, 1, 1);
    Wildness.settle(problem, Wander.FIRST);
    assertThat(leftOut(2)).isZero();
  }
}
