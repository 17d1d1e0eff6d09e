package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A small fit with what the builder of the simulated bench would know of it (its README). */
class BuildMeetingOfFitTest {
  private static final RunSet FEW =
      FaultyRuns.only(
          HealthyFit.SET,
          r -> Set.of("zero", "still", "spin01", "spin02", "spin03").contains(r.name()));

  private static FitResult fit(double ohm) {
    BuildFacts build =
        new BuildFacts(
            Optional.of(Uncertain.of(0.0127)),
            Optional.of(Uncertain.of(0.00838, 1e-5)),
            Optional.of(Uncertain.of(385)), // copper, from memory
            Optional.of(Uncertain.of(ohm, 0.1)),
            Optional.of(Uncertain.of(5)),
            Optional.of(Uncertain.of(0.05)),
            new BuildFacts.Wires(Optional.of(Uncertain.of(0.0005)), Optional.empty()));
    return SampleRuns.value(
        FitToRuns.fit(new RunSet(FEW.runs(), FEW.chain(), Optional.of(build)), () -> false));
  }

  private static Row row(BuildAgreement agreement, BuildQuantity quantity) {
    return agreement.rows().stream()
        .filter(r -> r.quantity() == quantity)
        .findFirst()
        .orElseThrow();
  }

  /** 5²/99.9 W over 1.04 · 8.38 g · 385 J/(kg K) warm by 74.6 mK a second. */
  @Test
  void theFitMeetsTheBuildThatWasSimulated() {
    FitResult fit = fit(99.9);
    BuildAgreement agreement = BuildMeeting.of(fit).orElseThrow();
    Row heating = row(agreement, BuildQuantity.HEATING);
    assertThat(heating.says()).isCloseTo(25 / 99.9 / (1.04 * 0.00838 * 385), within(1e-6));
    assertThat(heating.found()).isCloseTo(heating.says(), within(0.05 * heating.says()));
    Row still = row(agreement, BuildQuantity.STILL);
    double still_K =
        fit.formula()
            .steadyDelta_K(0, fit.signal().supply_V(), AirPoint.of(fit.setting().referenceAir()));
    assertThat(still.found()).isCloseTo(still_K, within(1e-9));
    assertThat(still.u_found() / still.found()).isBetween(0.0005, 0.05);
    assertThat(heating.u_found() / heating.found()).isBetween(0.0005, 0.05);
    assertThat(heating.agrees()).isTrue();
  }

  /** By the product of normal densities a number freed of its prior is further off than the fit. */
  @Test
  void aResistorOfFourTimesTheOhmsIsSuspected() {
    FitResult fit = fit(400);
    BuildAgreement agreement = BuildMeeting.of(fit).orElseThrow();
    Row heating = row(agreement, BuildQuantity.HEATING);
    int index = fit.setup().layout().path(0);
    assertThat(heating.off()).isGreaterThan(fit.values()[index] / heating.says() - 1);
    Row right = row(BuildMeeting.of(fit(99.9)).orElseThrow(), BuildQuantity.HEATING);
    assertThat(heating.found())
        .as("what the runs alone say, whatever was believed")
        .isCloseTo(right.found(), within(0.005 * right.found()));
    assertThat(agreement.disagrees()).isTrue();
    assertThat(BuildMeeting.warnings(agreement))
        .anyMatch(p -> p.id().equals("fit.build-off.heating"))
        .anyMatch(p -> p.id().startsWith("fit.build-suspect."));
  }
}
