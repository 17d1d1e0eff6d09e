package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.Cancelled;
import faintwind.calibration.Evidence.MonteCarloSummary;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Monte Carlo by refitting (seed 7)")
class RefitsTest {
  private static final FitResult FIT =
      SampleRuns.value(FitToRuns.fit(SampleRuns.of("bench-g"), () -> false));

  @Test
  void refitsSpreadAsTheCovarianceSays() {
    List<double[]> draws = MonteCarlo.refit(FIT, 40, 7, done -> {}, () -> false);
    MonteCarloSummary summary = MonteCarlo.summary(FIT, draws, 40 - draws.size(), 7);

    assertThat(summary.refits()).isGreaterThanOrEqualTo(36);
    // 40 draws know their own standard deviation to 11 %.
    assertThat(summary.ratio()).isBetween(0.7, 1.4);
  }

  @Test
  void theSameSeedGivesTheSameRefit() {
    double[] first = new Refits(FIT).draw(11, () -> false).orElseThrow();
    Refits other = new Refits(FIT);
    other.draw(12, () -> false);
    assertThat(other.draw(11, () -> false).orElseThrow()).containsExactly(first);
  }

  @Test
  void refitsCanBeCancelled() {
    assertThatThrownBy(() -> MonteCarlo.refit(FIT, 1000, 7, done -> {}, () -> true))
        .isInstanceOf(Cancelled.class);
  }
}
