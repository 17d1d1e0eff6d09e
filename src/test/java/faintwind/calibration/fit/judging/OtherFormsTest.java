package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OtherFormsTest {
  /** Only the physics-shaped formula has multipliers that could be weak or strong. */
  @ParameterizedTest
  @ValueSource(strings = {"king", "mixed"})
  void aFitOfAnotherFormIsDiagnosedToo(String model) {
    RunSet set = SampleRuns.of("bench-g");
    FitResult fit = SampleRuns.value(FitToRuns.fit(set, model, () -> false));
    List<Problem> warnings = Diagnosis.warnings(fit, set);
    assertThat(warnings).extracting(Problem::id).doesNotContain("fit.forced-weak");
    assertThat(warnings).extracting(Problem::id).contains("fit.one-direction");
  }
}
