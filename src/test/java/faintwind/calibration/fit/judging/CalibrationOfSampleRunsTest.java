package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.RunSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Regression on simulated builds, not a proof: their physics is independent of this program's. */
@DisplayName("Calibration of the ten sample builds (regression; simulated, invented)")
class CalibrationOfSampleRunsTest {
  private static final Map<String, Double> MOST_RMS =
      new TreeMap<>(
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
              "bench-j", 0.02));

  private static final Set<String> ROUGH = Set.of("bench-d", "bench-i");

  @Test
  void errorAndBandStayWithinTheirLimitsAndNoHealthyRunIsAccused() {
    int within = 0;
    int speeds = 0;
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, Double> bench : MOST_RMS.entrySet()) {
      RunSet set = SampleRuns.of(bench.getKey());
      Choice choice = SampleRuns.value(ModelChoice.choose(set, () -> false));
      FitResult fit = choice.fit();
      List<SampleRuns.Hold> holds = SampleRuns.probe(bench.getKey(), fit);
      double rms = SampleRuns.rms(holds);
      double band = 0;
      for (SampleRuns.Hold hold : holds) {
        double u95 = Verdict.u95_m_s(fit, hold.true_m_s()) / hold.true_m_s();
        band += u95 / holds.size();
        within += Math.abs(hold.relative()) <= u95 ? 1 : 0;
        speeds++;
      }
      lines.add(
          "%s rms %.4f mean U95 %.4f model %s".formatted(bench.getKey(), rms, band, fit.model()));
      assertThat(rms).as(String.join("\n", lines)).isLessThan(bench.getValue());
      assertThat(band)
          .as(lines.toString())
          .isLessThan(ROUGH.contains(bench.getKey()) ? 0.09 : 0.06);
      assertThat(Diagnosis.warnings(fit, set))
          .as("only what is true of the whole table may be said of " + bench.getKey())
          .allMatch(warning -> warning.id().equals("fit.one-direction"));
      assertThat(Diagnosis.whyNot(fit, set)).as(bench.getKey()).isEmpty();
    }
    assertThat(within / (double) speeds).as(String.join("\n", lines)).isGreaterThan(0.90);
  }
}
