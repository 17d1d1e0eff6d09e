package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * By hand: a ball that warms to 20 K with a time constant of 400 s from 60 s on, and a current that
 * adds 1 K the moment the heater comes on: a twentieth. The ball itself warms by 0.2 K in the four
 * seconds in which a jump comes, so that its size is known to a hundredth of the 20 K.
 */
class LeakTest {
  private static final Series WARMING = MadeRuns.series(0, 2, 4000, t -> warming(t, 60));
  private static final Series LEAKING =
      MadeRuns.series(0, 2, 4000, t -> warming(t, 60) + (t < 60 ? 0 : 1));
  private static final Run ZERO = MadeRuns.zero("zero", MadeRuns.series(0, 2, 60, t -> 0));

  private static double warming(double t_s, double from_s) {
    return t_s < from_s ? 0 : 20 * -Math.expm1(-(t_s - from_s) / 400);
  }

  @Test
  void theJumpIsFoundWithItsShare() {
    Run leaking = MadeRuns.still("leaks", LEAKING);
    double share = Leak.in(leaking, MadeRuns.set(ZERO, leaking)).orElseThrow();
    assertThat(share).isCloseTo(1 / 21.0, within(0.01));
  }

  @Test
  void aJumpDownIsNegative() {
    Run leaking =
        MadeRuns.still(
            "leaks", MadeRuns.series(0, 2, 4000, t -> warming(t, 60) - (t < 60 ? 0 : 1)));
    assertThat(Leak.in(leaking, MadeRuns.set(ZERO, leaking)).orElseThrow())
        .isCloseTo(-1 / 19.0, within(0.01));
  }

  @Test
  void warmingAloneIsNone() {
    Run healthy = MadeRuns.still("healthy", WARMING);
    RunSet set = MadeRuns.set(ZERO, healthy);
    assertThat(Leak.in(healthy, set)).isEmpty();
    assertThat(Leak.in(ZERO, set)).isEmpty();
    assertThat(Leak.freed(set)).isSameAs(set);
  }

  @Test
  void aJumpOfAFiftiethIsTheLeast() {
    for (double size_K : new double[] {0.3, 0.5}) {
      Run run =
          MadeRuns.still(
              "a", MadeRuns.series(0, 2, 4000, t -> warming(t, 60) + (t < 60 ? 0 : size_K)));
      assertThat(Leak.in(run, MadeRuns.set(ZERO, run)).isPresent()).isEqualTo(size_K > 0.4);
    }
  }

  @Test
  void aRecordingShorterThanTenMinutesSaysNothing() {
    Run brief = MadeRuns.still("brief", LEAKING.window(0, 598));
    Run whole = MadeRuns.still("whole", LEAKING);
    assertThat(Leak.in(brief, MadeRuns.set(ZERO, whole))).isEmpty();
  }

  @Test
  void freedRunsBeginAfterTheJumpAndHaveNoZero() {
    Run leaking = MadeRuns.still("leaks", LEAKING);
    Run warm = MadeRuns.still("warm", MadeRuns.series(0, 2, 4000, t -> 21));
    RunSet freed = Leak.freed(MadeRuns.set(ZERO, leaking, warm));
    assertThat(freed.runs()).extracting(Run::name).containsExactly("leaks", "warm");
    assertThat(freed.runs().get(0).recording().signal().first_s()).isBetween(60.0, 70.0);
    assertThat(freed.runs().get(0).recording().signal().last_s()).isEqualTo(4000);
    assertThat(freed.runs().get(1)).isSameAs(warm);
  }

  /**
   * The recording begins after the switch: 1 K at once, 20 K · 30/400 = 1.45 K in half a minute.
   */
  @Test
  void aRecordingThatBeginsWithTheJumpIsFoundByItsFirstRow() {
    Run begun = MadeRuns.still("begun", MadeRuns.series(0, 2, 4000, t -> warming(t, 0) + 1));
    assertThat(Leak.in(begun, MadeRuns.set(ZERO, begun)).orElseThrow())
        .isCloseTo(1 / 21.0, within(0.001));
  }

  @Test
  void aSupplyThatWasOnBeforeExplainsTheFirstRow() {
    Series signal = MadeRuns.series(0, 2, 4000, t -> warming(t, 0) + 1);
    assertThat(Leak.in(withSupply(signal, 5), MadeRuns.set(ZERO, withSupply(signal, 5)))).isEmpty();
    assertThat(Leak.in(withSupply(signal, 0), MadeRuns.set(ZERO, withSupply(signal, 0))))
        .isPresent();
  }

  /** A knock or a lost bit, wherever it comes: one row, or two that are near in time. */
  @Test
  void aSpikedRowOrTwoAfterAColdStartIsNoLeak() {
    for (double step_s : new double[] {1, 2, 10}) {
      for (double size_K : new double[] {-3, -0.5, 0.5, 3}) {
        for (int at : new int[] {0, 1, 2, 4, 5, 10, 11}) {
          for (int rows = 1; rows <= (step_s > 2 ? 1 : 2); rows++) {
            double from_s = step_s * at;
            double to_s = from_s + step_s * (rows - 0.5);
            Run spiked =
                MadeRuns.still(
                    "spiked",
                    MadeRuns.series(
                        0,
                        step_s,
                        4000,
                        t -> warming(t, 60) + (t >= from_s && t < to_s ? size_K : 0)));
            assertThat(Leak.in(spiked, MadeRuns.set(ZERO, spiked)))
                .as("%s K in %s rows of %s s from %s on", size_K, rows, step_s, at)
                .isEmpty();
          }
        }
      }
    }
  }

  @Test
  void aLeakBesideASpikedRowIsFoundAllTheSame() {
    Run leaking =
        MadeRuns.still(
            "leaks",
            MadeRuns.series(
                0, 2, 4000, t -> warming(t, 60) + (t < 60 ? 0 : 1) + (t == 20 || t == 98 ? 3 : 0)));
    RunSet set = MadeRuns.set(ZERO, leaking);
    assertThat(Leak.in(leaking, set).orElseThrow()).isCloseTo(1 / 21.0, within(0.01));
    assertThat(Leak.freed(set).runs().get(0).recording().signal().first_s()).isBetween(60.0, 70.0);
  }

  private static Run withSupply(Series signal, double first_V) {
    Series supply = MadeRuns.series(0, 2, 4000, t -> t == 0 ? first_V : 5);
    Recording recording =
        new Recording(
            SignalUnit.DELTA_K,
            signal,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(supply),
            Optional.empty());
    return MadeRuns.run("a", RunKind.STILL, recording, Optional.empty());
  }

  /** Of 20 K: 5.6 K are cold, and no ball begins there; 6.4 K may be one that was warm before. */
  @Test
  void aRecordingThatBeginsAboveThreeTenthsOfTheLargestIsOfAWarmBall() {
    Run warm = MadeRuns.still("warm", MadeRuns.series(0, 2, 4000, t -> 20));
    for (double first_K : new double[] {5.6, 6.4}) {
      Run run =
          MadeRuns.still(
              "a",
              MadeRuns.series(0, 2, 900, t -> first_K + (t < 60 ? 0 : 1 + warming(t, 60) / 2)));
      assertThat(Leak.in(run, MadeRuns.set(ZERO, warm, run)).isPresent()).isEqualTo(first_K < 6);
    }
  }

  /** A jump that comes after two minutes is no heater that was switched on at the start. */
  @Test
  void aJumpIsLookedForInTheFirstTwoMinutes() {
    for (double at_s : new double[] {100, 140}) {
      Run run =
          MadeRuns.still(
              "a", MadeRuns.series(0, 2, 4000, t -> warming(t, at_s) + (t < at_s ? 0 : 1)));
      assertThat(Leak.in(run, MadeRuns.set(ZERO, run)).isPresent()).isEqualTo(at_s < 120);
    }
  }

  /** The ball itself rises by 1.45 K in the half minute after: three tenths of that are 0.43 K. */
  @Test
  void aFirstRowThatTheRiseGoesOnFromIsNoJump() {
    for (double first_K : new double[] {0.5, 0.42}) {
      Run run = MadeRuns.still("a", MadeRuns.series(0, 2, 4000, t -> first_K + warming(t, 0)));
      assertThat(Leak.in(run, MadeRuns.set(ZERO, run)).isPresent()).isEqualTo(first_K > 0.43);
    }
  }
}
