package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildAgreement.Suspicion;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.EnScore;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.message.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: what a person is told of an agreement that was written down here. */
class BuildMeetingTest {
  private static Row row(double found, double en, boolean judged) {
    return new Row(BuildQuantity.HEATING, found, 0.003, 0.1, 0.004, new EnScore(en), judged);
  }

  private static BuildAgreement with(Row row, Suspicion... suspects) {
    return new BuildAgreement(List.of(row), List.of(suspects));
  }

  private static Suspicion suspect(BuildSuspect which, double factor, double weight) {
    return new Suspicion(which, factor, true, weight);
  }

  /**
   * 0.12 ± 0.003 against 0.1 ± 0.004: off by 20 %; the fit's uncertainty brought to the build's
   * value is 0.0025, so that both together are 2 · √(0.004² + 0.0025²) = 0.00943.
   */
  @Test
  void aNumberThatDoesNotAgreeIsNamedWithBothValues() {
    Problem off = BuildMeeting.warnings(with(row(0.12, 2, true))).get(0);
    assertThat(off.id()).isEqualTo("fit.build-off." + BuildQuantity.HEATING.word());
    assertThat(off.found()).isEqualTo("0.120");
    assertThat(off.details()).containsExactly("0.100", "0.00943", "20.0");
    assertThat(row(0.12, 2, true).off()).isCloseTo(0.2, within(1e-12));
  }

  /** 2.576/1.960 = 1.314 is the most that tolerances explain. */
  @Test
  void whatTolerancesExplainIsNotNamed() {
    assertThat(BuildMeeting.warnings(with(row(0.12, 1.31, true)))).isEmpty();
    assertThat(BuildMeeting.warnings(with(row(0.12, -1.32, true)))).hasSize(1);
    assertThat(BuildMeeting.warnings(with(row(0.12, 2, false)))).isEmpty();
    assertThat(with(row(0.12, 2, false)).disagrees()).isFalse();
    assertThat(with(row(0.12, 2, true)).disagrees()).isTrue();
    assertThat(with(row(0.12, 1, true)).disagrees()).isFalse();
  }

  @Test
  void suspectsAreNamedByTheirWeightUpToFour() {
    List<Problem> found =
        BuildMeeting.warnings(
            with(
                row(0.1, 0, true),
                suspect(BuildSuspect.RESISTOR, 0.8, 0.5),
                suspect(BuildSuspect.SUPPLY, 1.1, 0.3),
                suspect(BuildSuspect.LEADS, 2, 0.0101),
                suspect(BuildSuspect.GLUE, 2, 0.0099)));
    assertThat(found)
        .extracting(Problem::id)
        .containsExactly(
            "fit.build-suspect." + BuildSuspect.RESISTOR.word(),
            "fit.build-suspect." + BuildSuspect.SUPPLY.word(),
            "fit.build-suspect." + BuildSuspect.LEADS.word());
    assertThat(found.get(0).found()).isEqualTo("50.0");
    assertThat(found.get(0).details()).containsExactly("-20.0");
    assertThat(
            BuildMeeting.warnings(
                with(
                    row(0.1, 0, true),
                    suspect(BuildSuspect.RESISTOR, 1, 0.2),
                    suspect(BuildSuspect.SUPPLY, 1, 0.2),
                    suspect(BuildSuspect.LEADS, 1, 0.2),
                    suspect(BuildSuspect.GLUE, 1, 0.2),
                    suspect(BuildSuspect.METAL, 1, 0.2))))
        .hasSize(4);
  }

  @Test
  void withoutARecordOfTheBuildThereIsNoMeeting() {
    assertThat(BuildMeeting.of(HealthyFit.FIT)).isEmpty();
  }
}
