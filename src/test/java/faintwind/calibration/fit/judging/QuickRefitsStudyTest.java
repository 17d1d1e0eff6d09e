package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Refits by a few steps of Gauss and Newton beside the same refits searched to the end (relative
 * change of the sum of squares below 1e-7): the same draws, the same quantiles of the speeds read.
 */
@Tag("slow")
@DisplayName("Quick refits beside refits searched to the end (seed 7)")
class QuickRefitsStudyTest {
  private static final Optimiser TO_THE_END = new Optimiser(200, 1e-7);
  private static final int DRAWS = Integer.getInteger("refits.draws", 60);
  private static final double[] SPEEDS_M_S = {0.1, 0.5, 2};
  private static final double[] QUANTILES_PCT = {2.5, 16, 50, 84, 97.5};

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench-a", "bench-b", "bench-c", "bench-d", "bench-e", "bench-f", "bench-g", "bench-h",
        "bench-i", "bench-j"
      })
  void quantilesOnTheSampleBenches(String bench) {
    compare(bench, SampleRuns.of(bench));
  }

  @ParameterizedTest
  @ValueSource(longs = {3001, 3002, 3003, 3004})
  void quantilesOnMadeUpBuilds(long seed) {
    compare(
        "build " + seed,
        VirtualRehearsal.calibration(VirtualDraw.build(seed), VirtualPlan.inTurn(seed), seed)
            .runSet());
  }

  private static void compare(String name, RunSet set) {
    FitResult fit = SampleRuns.value(FitToRuns.fit(set, () -> false));
    Refits refits = new Refits(fit);
    List<double[]> quickDraws = new ArrayList<>();
    List<double[]> fullDraws = new ArrayList<>();
    for (int i = 0; i < DRAWS; i++) {
      long seed = MonteCarlo.seedOf(7, i);
      double[] draw = refits.draw(seed, () -> false).orElseThrow();
      // Corners of the ramps keep a search from settling in a few draws; those are not compared.
      refits
          .draw(seed, x -> refits.searched(TO_THE_END, x, () -> false))
          .ifPresent(
              end -> {
                quickDraws.add(draw);
                fullDraws.add(end);
              });
    }
    System.out.printf("%s: %d of %d draws searched to the end%n", name, fullDraws.size(), DRAWS);
    assertThat(fullDraws.size()).as(name).isGreaterThan(DRAWS / 2);
    double[][] quick = speeds(fit, quickDraws);
    double[][] full = speeds(fit, fullDraws);
    for (int s = 0; s < SPEEDS_M_S.length; s++) {
      double u = Math.sqrt(StatUtils.variance(full[s]));
      double worst = 0;
      for (double percent : QUANTILES_PCT) {
        double apart =
            StatUtils.percentile(quick[s], percent) - StatUtils.percentile(full[s], percent);
        worst = Math.max(worst, Math.abs(apart) / u);
      }
      double ratio = Math.sqrt(StatUtils.variance(quick[s])) / u;
      System.out.printf(
          Locale.ROOT,
          "%s, %.1f m/s: spread %.3f of the full one, quantiles within %.3f u%n",
          name,
          SPEEDS_M_S[s],
          ratio,
          worst);
      assertThat(ratio).as(name).isBetween(0.93, 1.07);
      assertThat(worst).as(name).isLessThan(0.25);
    }
  }

  private static double[][] speeds(FitResult fit, List<double[]> draws) {
    return Arrays.stream(SPEEDS_M_S)
        .mapToObj(
            v -> draws.stream().mapToDouble(draw -> MonteCarlo.speed_m_s(fit, draw, v)).toArray())
        .toArray(double[][]::new);
  }
}
