package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.Cancelled;
import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.Parameter;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Monte Carlo by refitting (seed 7)")
class RefitsTest {
  private static final FitResult FIT =
      SampleRuns.value(FitToRuns.fit(SampleRuns.of("bench-g"), () -> false));

  @Test
  void refitsSpreadAsTheCovarianceSays() {
    List<double[]> draws = draws();
    MonteCarloSummary summary = MonteCarlo.summary(FIT, draws, 40 - draws.size(), 7);

    assertThat(summary.refits()).isGreaterThanOrEqualTo(36);
    // 40 draws know their own standard deviation to 11 %.
    assertThat(summary.ratio()).isBetween(0.7, 1.4);
  }

  /** Of the heating most is known by the recordings: with them as they are it spreads by 0.7 u. */
  @Test
  void theRecordingsAreDrawnToo() {
    List<Parameter> parameters = FIT.formulaFit().parameters();
    List<String> names = parameters.stream().map(Parameter::name).toList();
    int heating = names.indexOf("heating");
    double[] drawn = draws().stream().mapToDouble(draw -> draw[heating]).toArray();
    double ratio = new StandardDeviation().evaluate(drawn) / parameters.get(heating).u();
    assertThat(ratio).isBetween(0.85, 1.3);
  }

  private static List<double[]> draws() {
    Refits refits = new Refits(FIT);
    return IntStream.range(0, 40)
        .mapToObj(i -> refits.draw(MonteCarlo.seedOf(7, i), () -> false))
        .flatMap(Optional::stream)
        .toList();
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
    Refits refits = new Refits(FIT);
    assertThatThrownBy(() -> refits.draw(7, () -> true)).isInstanceOf(Cancelled.class);
  }
}
