package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Origin;
import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Small fits of simulated runs, compared with what the simulation put in: an arm that carries 2.743
 * % of its speed round (its truth.json).
 */
class FewRunsTest {
  private static final RunSet FEW =
      FaultyRuns.only(
          HealthyFit.SET,
          r -> Set.of("zero", "still", "spin01", "spin02", "spin03").contains(r.name()));

  @Test
  void threeSpinsReadTheSpeedsBetweenThem() {
    FitResult fit = SampleRuns.value(FitToRuns.fit(FEW, () -> false));
    assertThat(fit.aside()).isEmpty();
    assertThat(fit.setup().freed()).isEmpty();
    List<SampleRuns.Hold> holds =
        SampleRuns.probe("bench-g", fit).stream()
            .filter(h -> h.true_m_s() > 0.3 && h.true_m_s() < 2.2)
            .toList();
    assertThat(holds).hasSizeGreaterThan(3);
    for (SampleRuns.Hold hold : holds) {
      double u95 = Verdict.u95_m_s(fit, hold.true_m_s()) / hold.true_m_s();
      assertThat(hold.relative()).isCloseTo(0, within(Math.min(0.06, 1.5 * u95)));
    }
    int share = fit.setup().layout().carriedShare();
    double u = Math.sqrt(fit.covariance()[share][share]);
    assertThat(fit.values()[share]).isCloseTo(0.02743, within(3 * u));
    assertThat(u).isBetween(0.002, 0.02);
  }

  /** Turned half as fast as the others say: its speed must not count, and is told. */
  @Test
  void aSpeedWrittenTwiceAsLargeIsFreed() {
    RunSet wrong = FaultyRuns.each(FEW, FaultyRuns.run("spin02", r -> FaultyRuns.turned(r, 2)));
    Setting setting = Setting.of(wrong);
    FitResult fit = FitToRuns.fit(setting, setting.model(PhysicsShaped.ID), () -> false);
    assertThat(fit.setup().freed()).containsExactly("spin02");
    double off = fit.values()[Objects.requireNonNull(fit.setup().speedColumns().get("spin02"))];
    assertThat(1 + off).isCloseTo(0.5, within(0.05));
    assertThat(Diagnosis.warnings(fit, wrong)).anyMatch(p -> p.id().equals("fit.slip-one.twice"));
    assertThat(Diagnosis.whyNot(fit, wrong)).containsEntry("spin02", "why.contradicts");
  }

  /**
   * The physics-shaped formula is the default; the four others stand beside it by their criterion.
   */
  @Test
  void theChoiceIsAmongFiveFormulas() {
    Choice choice = SampleRuns.value(ModelChoice.choose(FEW, () -> false));
    assertThat(choice.fit().model()).isEqualTo(PhysicsShaped.ID);
    assertThat(choice.candidates())
        .extracting(Candidate::model)
        .containsExactlyInAnyOrder("physics-shaped", "mixed-linear", "mixed", "king", "king-half");
    assertThat(choice.candidates())
        .isSortedAccordingTo(Comparator.comparingDouble(Candidate::aicc));
    assertThat(choice.candidates())
        .filteredOn(Candidate::chosen)
        .extracting(Candidate::model)
        .containsExactly(PhysicsShaped.ID);
    assertThat(choice.leftOut()).isEqualTo(LeftOutRuns.of(choice.fit()));
  }

  /** Every speed written ten times as large as it was. */
  @Test
  void aSlipInAllRunsIsNamedBeforeWhatItMakesImpossible() {
    RunSet ten = FaultyRuns.each(FEW, r -> r.arm().isPresent() ? FaultyRuns.turned(r, 10) : r);
    List<Problem> found = PhysicalFit.of(ten, () -> false).problems();
    assertThat(found.get(0).id()).isEqualTo("fit.slip-all.ten");
    assertThat(found.get(0).found()).isEqualTo("10.0");
    assertThat(found).extracting(Problem::id).anyMatch(id -> id.startsWith("fit.impossible."));
  }

  @Test
  void theLookAtACalibrationThatWasReadAgainIsTheSame() {
    FitResult fit = SampleRuns.value(FitToRuns.fit(FEW, () -> false));
    Calibration calibration =
        CalibrationAssembly.of(
            Choice.only(fit),
            FEW,
            new Origin("a", OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of()),
            Optional.empty());
    FitLook again = FitLook.again(calibration, FEW, () -> false);
    assertThat(again.recordings()).isNotEmpty();
    RunSet other =
        FaultyRuns.each(
            FEW, FaultyRuns.run("still", r -> FaultyRuns.signal(r, (t, s) -> 1.05 * s)));
    assertThat(FitLook.again(calibration, other, () -> false).recordings()).isEmpty();
  }
}
