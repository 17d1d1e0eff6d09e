package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.run.RunSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression on simulated builds, not a proof: their physics is independent of this program's. */
@DisplayName("Calibration of the ten sample builds (regression; simulated, invented)")
class CalibrationOfSampleRunsTest {
  private static final Map<String, Double> MOST_RMS =
      Map.of(
          "bench-a", 0.02,
          "bench-b", 0.02,
          "bench-c", 0.02,
          "bench-d", 0.05,
          "bench-e", 0.02,
          "bench-f", 0.02,
          "bench-g", 0.03,
          "bench-h", 0.02,
          "bench-i", 0.05,
          "bench-j", 0.02);

  private static final Set<String> ROUGH = Set.of("bench-d", "bench-i");

  /** At most one of eleven speeds may lie outside its band. */
  private static final double LEAST_WITHIN = 0.9;

  @ParameterizedTest
  @ValueSource(strings = {"bench-b", "bench-h", "bench-i"})
  void errorAndBandStayWithinTheirLimitsAndNoHealthyRunIsAccused(String bench) {
    RunSet set = SampleRuns.of(bench);
    Choice choice = SampleRuns.value(ModelChoice.choose(set, () -> false));
    FitResult fit = choice.fit();
    List<SampleRuns.Hold> holds = SampleRuns.probe(bench, fit);
    double band = 0;
    double within = 0;
    for (SampleRuns.Hold hold : holds) {
      double u95 = Verdict.u95_m_s(fit, hold.true_m_s()) / hold.true_m_s();
      band += u95 / holds.size();
      within += Math.abs(hold.relative()) <= u95 ? 1.0 / holds.size() : 0;
    }
    assertThat(SampleRuns.rms(holds)).as(fit.model()).isLessThan(MOST_RMS.get(bench));
    assertThat(band).isLessThan(ROUGH.contains(bench) ? 0.09 : 0.06);
    assertThat(within).isGreaterThan(LEAST_WITHIN);
    assertThat(Diagnosis.warnings(fit, set))
        .as("only what is true of the whole table may be said")
        .allMatch(warning -> warning.id().equals("fit.one-direction"));
    assertThat(Diagnosis.whyNot(fit, set)).isEmpty();
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(
      strings = {"bench-a", "bench-c", "bench-d", "bench-e", "bench-f", "bench-g", "bench-j"})
  void theOtherBenchesToo(String bench) {
    errorAndBandStayWithinTheirLimitsAndNoHealthyRunIsAccused(bench);
  }
}
