package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.fit.solving.HealthyFit;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Draws made by hand in place of refits. */
class MonteCarloTest {
  private static double[] forced(double factor) {
    double[] values = FIT.formulaFit().values();
    values[HealthyFit.index("forced")] *= factor;
    return values;
  }

  @Test
  void eachRefitHasItsOwnSeed() {
    long[] seeds =
        LongStream.range(0, 100).map(i -> MonteCarlo.seedOf(7, (int) i)).distinct().toArray();
    assertThat(seeds).hasSize(100);
    assertThat(MonteCarlo.seedOf(7, 3)).isEqualTo(MonteCarlo.seedOf(7, 3));
    assertThat(MonteCarlo.seedOf(8, 3)).isNotEqualTo(MonteCarlo.seedOf(7, 3));
  }

  @Test
  void theFittedFormulaReadsTheSpeedItself() {
    for (double speed_m_s : new double[] {0.1, 0.5, 2}) {
      assertThat(MonteCarlo.speed_m_s(FIT, forced(1), speed_m_s))
          .isCloseTo(speed_m_s, within(1e-6 * speed_m_s));
    }
  }

  /** A ball that loses more in wind reads a given signal as less wind. */
  @Test
  void aStrongerForcedPartReadsLess() {
    double less = MonteCarlo.speed_m_s(FIT, forced(1.01), 1);
    double more = MonteCarlo.speed_m_s(FIT, forced(0.99), 1);
    assertThat(less).isBetween(0.97, 0.99);
    assertThat(more).isBetween(1.01, 1.03);
  }

  /** By hand: the standard deviation of two numbers is their distance over √2. */
  @Test
  void uncertaintyIsTheScatterOfTheDraws() {
    List<double[]> draws = List.of(forced(1.01), forced(0.99));
    double apart =
        MonteCarlo.speed_m_s(FIT, forced(0.99), 1) - MonteCarlo.speed_m_s(FIT, forced(1.01), 1);
    assertThat(MonteCarlo.u_m_s(FIT, draws, 1)).isCloseTo(apart / Math.sqrt(2), within(1e-9));
    assertThat(MonteCarlo.u_m_s(FIT, List.of(forced(1), forced(1)), 1)).isCloseTo(0, within(1e-12));
  }

  @Test
  void theSummaryCountsAndCompares() {
    MonteCarloSummary summary = MonteCarlo.summary(FIT, List.of(forced(1.01), forced(0.99)), 3, 7);
    assertThat(summary.refits()).isEqualTo(2);
    assertThat(summary.failed()).isEqualTo(3);
    assertThat(summary.seed()).isEqualTo(7);
    double at1 =
        MonteCarlo.u_m_s(FIT, List.of(forced(1.01), forced(0.99)), 1)
            / MonteCarlo.byCovariance_m_s(FIT, 1);
    assertThat(summary.ratio()).isBetween(0.3 * at1, 1.5 * at1);
    assertThat(MonteCarlo.byCovariance_m_s(FIT, 1)).isEqualTo(Verdict.u_m_s(FIT, 1));
  }
}
