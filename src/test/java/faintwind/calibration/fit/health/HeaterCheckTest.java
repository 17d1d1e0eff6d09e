package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * By hand: a ball at 20 K above its twin that loses its heater cools by an exponential of its own
 * time constant, 400 s here.
 */
class HeaterCheckTest {
  private static final double LEVEL_K = 20;

  private static Series series(DoubleUnaryOperator signal) {
    return MadeRuns.series(0, 1, 900, signal);
  }

  private static List<Problem> of(Run run) {
    return HeaterCheck.refusals(MadeRuns.set(run), 0, LEVEL_K);
  }

  private static double cooling(double t_s, double from_s, double constant_s) {
    return LEVEL_K * Math.exp(-Math.max(0, t_s - from_s) / constant_s);
  }

  /** It is looked every 30 s, and each look reaches a minute on: the fall is seen from 270 s. */
  @Test
  void aFallThatOnlyALostHeaterExplainsIsNamedWithItsTime() {
    List<Problem> found = of(MadeRuns.still("a", series(t -> cooling(t, 300, 400))));
    assertThat(found).extracting(Problem::id).containsExactly("fit.heater-lost");
    assertThat(found.get(0).found()).isEqualTo("270");
    assertThat(found.get(0).where().run()).contains("a");
  }

  @Test
  void aLevelThatIsKeptIsHealthy() {
    assertThat(of(MadeRuns.still("a", series(t -> LEVEL_K)))).isEmpty();
    assertThat(of(MadeRuns.still("a", series(t -> LEVEL_K - cooling(t, 0, 400))))).isEmpty();
  }

  /** 1/2000 a second is less than a third of a ball's own rate: draught, not the heater. */
  @Test
  void aSlowFallIsNotTheHeater() {
    assertThat(of(MadeRuns.still("a", series(t -> cooling(t, 300, 2000))))).isEmpty();
  }

  @Test
  void aFallByATenthIsNotTheHeater() {
    assertThat(of(MadeRuns.still("a", series(t -> 18 + cooling(t, 300, 100) / 10)))).isEmpty();
  }

  @Test
  void aBallThatComesBackHasItsHeater() {
    assertThat(
            of(
                MadeRuns.still(
                    "a",
                    series(
                        t -> t < 500 ? cooling(t, 300, 400) : LEVEL_K - cooling(t, 500, 100) / 3))))
        .isEmpty();
  }

  @Test
  void theSignOfTheChainDoesNotMatterToALevelThatIsKept() {
    Run run = MadeRuns.still("a", series(t -> 5 + LEVEL_K));
    assertThat(HeaterCheck.refusals(MadeRuns.set(run), 5, LEVEL_K)).isEmpty();
  }

  @Test
  void aSpinMayCoolWhileItTurnsAndComesBack() {
    DoubleUnaryOperator healthy =
        t ->
            t < 300
                ? LEVEL_K
                : t < 600 ? 10 + cooling(t, 300, 60) / 2 : 20 - cooling(t, 600, 60) / 2;
    assertThat(of(MadeRuns.spin("a", series(healthy), MadeRuns.arm(300, 600, 60, 300)))).isEmpty();
  }

  @Test
  void aSpinThatKeepsFallingAfterItsStopHasLostItsHeater() {
    List<Problem> found =
        of(MadeRuns.spin("a", series(t -> cooling(t, 300, 400)), MadeRuns.arm(300, 600, 60, 300)));
    assertThat(found).extracting(Problem::id).containsExactly("fit.heater-lost");
    assertThat(found.get(0).found()).isEqualTo("660");
  }

  /** A tenth of the largest signal of all runs: 2 of 20 K. */
  @Test
  void aSpinThatWasNeverWarmHadItsHeaterOff() {
    Run cold = MadeRuns.spin("a", series(t -> 2), MadeRuns.arm(300, 600, 60, 300));
    List<Problem> found = of(cold);
    assertThat(found).extracting(Problem::id).containsExactly("fit.heater-off");
    assertThat(found.get(0).found()).isEqualTo("10");
    assertThat(of(MadeRuns.spin("a", series(t -> 2.5), MadeRuns.arm(300, 600, 60, 300)))).isEmpty();
    assertThat(of(MadeRuns.zero("a", series(t -> 0)))).isEmpty();
  }

  /** As quick as a heater that is lost: 12 % in all decide. */
  @Test
  void aQuickFallByAnEighthIsTheHeater() {
    for (double share : new double[] {0.11, 0.13}) {
      Run run =
          MadeRuns.still("a", series(t -> (1 - share) * LEVEL_K + share * cooling(t, 300, 40)));
      assertThat(of(run).isEmpty()).isEqualTo(share < 0.12);
    }
  }

  /** It falls to 7.4 K: 0.8 K more at the end are a draught that ends, 1.4 K a heater. */
  @Test
  void aHeaterBringsTheBallBackByATwentiethOfItsLevel() {
    for (double back_K : new double[] {0.8, 1.4}) {
      Run run =
          MadeRuns.still(
              "a",
              series(
                  t -> cooling(Math.min(t, 700), 300, 400) + back_K * Math.max(0, t - 700) / 200));
      assertThat(of(run).isEmpty()).isEqualTo(back_K > 1);
    }
  }
}
