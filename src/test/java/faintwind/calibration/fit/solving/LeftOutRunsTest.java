package faintwind.calibration.fit.solving;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Evidence.LeftOut;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class LeftOutRunsTest {
  /** By hand: off by +10 and −30 %, √((0.01 + 0.09)/2) = 0.2236. */
  @Test
  void rootMeanSquareIsThatOfTheRelativeErrors() {
    List<LeftOut> runs = List.of(new LeftOut("a", 2, 2.2, 1), new LeftOut("b", 1, 0.7, 1));
    assertThat(LeftOutRuns.rms(runs)).isCloseTo(0.22361, within(1e-5));
    assertThat(LeftOutRuns.rms(List.of())).isZero();
  }

  @Test
  void healthyRunsAreForetoldWithinTheirUncertainty() {
    List<LeftOut> all = LeftOutRuns.of(FIT);
    assertThat(all).extracting(LeftOut::run).contains("spin01", "spin05", "spin07");
    for (LeftOut run : all) {
      assertThat(Math.abs(run.foretold_m_s() - run.speed_m_s())).isLessThan(4.5 * run.u_m_s());
    }
    assertThat(LeftOutRuns.contradicting(FIT)).isEmpty();
    assertThat(LeftOutRuns.rms(all)).isLessThan(0.03);
  }

  /**
   * Leaving a run out frees it of its own prior, so that the rest is further off, and less sure.
   */
  @Test
  void aRunIsForetoldWithoutItsOwnSpeed() {
    double[] values = FIT.values();
    for (LeftOut run : LeftOutRuns.of(FIT)) {
      int column = Objects.requireNonNull(FIT.setup().speedColumns().get(run.run()));
      double withOwn = Math.abs(values[column]);
      double without = Math.abs(run.foretold_m_s() / run.speed_m_s() - 1);
      assertThat(without).isGreaterThan(withOwn);
      assertThat(run.u_m_s() / run.speed_m_s())
          .isGreaterThan(Math.sqrt(FIT.covariance()[column][column]));
    }
  }

  @Test
  void healthyRunsAreNotExchanged() {
    assertThat(LeftOutRuns.exchanged(FIT, "spin01", "spin02")).isFalse();
    assertThat(LeftOutRuns.exchanged(FIT, "spin01", "spin01")).isFalse();
    assertThat(LeftOutRuns.exchanged(FIT, "spin01", "nobody")).isFalse();
  }
}
