package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static faintwind.calibration.fit.solving.HealthyFit.SET;
import static faintwind.calibration.fit.solving.HealthyFit.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Origin;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.response.StraightLineLook;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Compared with the simulation that made the runs: seven spins of 0.1 to 3 m/s, air carried 2.7 %.
 */
class CalibrationAssemblyTest {
  private static final Origin ORIGIN =
      new Origin("made up", OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of());
  private final Calibration calibration =
      CalibrationAssembly.of(Choice.only(FIT), SET, ORIGIN, Optional.empty());

  @Test
  void coverageIsThatOfTheRuns() {
    assertThat(calibration.coverage().lowest_m_s())
        .isCloseTo(0.09995 * (1 - 0.02743), within(0.003));
    assertThat(calibration.coverage().highest_m_s())
        .isCloseTo(2.99864 * (1 - 0.02743), within(0.06));
    double largest = FIT.setting().largest() - value("offset");
    assertThat(calibration.coverage().highestSignal()).isBetween(largest, 1.05 * largest);
    assertThat(calibration.coverage().lowestSignal()).isBetween(0.0, 0.6 * largest);
    assertThat(calibration.coverage().carriedAirShown()).isTrue();
  }

  /** Nothing was told of the arm beforehand, so that fit and belief are shown as they are. */
  @Test
  void theArmIsShownAsTheFitFoundIt() {
    ArmShown arm = calibration.coverage().arm().orElseThrow();
    int share = FIT.setup().layout().carriedShare();
    assertThat(arm.carriedShare().value()).isCloseTo(FIT.values()[share], within(1e-12));
    assertThat(arm.carriedShare().u())
        .isCloseTo(Math.sqrt(FIT.covariance()[share][share]), within(1e-12));
    assertThat(arm.carriedShare().value()).isCloseTo(0.02743, within(3 * arm.carriedShare().u()));
    assertThat(arm.carriedShare().unit()).isEqualTo("1");
    assertThat(arm.rise_s().unit()).isEqualTo("s");
    assertThat(arm.draught_m_s().unit()).isEqualTo("m/s");
    assertThat(arm.asymmetry()).isEmpty();
  }

  @Test
  void evidenceIsThatOfTheFit() {
    assertThat(calibration.evidence().runs())
        .extracting(RunOutcome::run)
        .containsExactlyElementsOf(SET.runs().stream().map(r -> r.name()).toList());
    assertThat(calibration.evidence().candidates())
        .containsExactly(new Candidate(FIT.model(), FIT.deviance(), 0, true));
    assertThat(calibration.evidence().monteCarlo()).isEmpty();
    assertThat(calibration.evidence().build()).isEmpty();
    assertThat(calibration.warnings()).hasSize(1);
    assertThat(calibration.origin()).isEqualTo(ORIGIN);
    assertThat(calibration.formula().parameters()).isEqualTo(FIT.formulaFit().parameters());
  }

  @Test
  void theLookDrawsWhatWasMeasuredAndFitted() {
    FitLook look = FitLook.of(FIT, calibration, SET.runs());
    FittedRecording session = look.recordings().get(0);
    assertThat(session.file()).isEqualTo("session.csv");
    double rms = calibration.evidence().residuals().rms();
    for (int i = 0; i < session.measured().size(); i++) {
      assertThat(session.fitted().value(i))
          .isCloseTo(session.measured().value(i), within(15 * rms));
    }
    assertThat(look.straightLine()).isEqualTo(StraightLineLook.of(calibration, SET.runs()));
    assertThat(FitLook.withoutFit(calibration, SET.runs()).recordings()).isEmpty();
  }
}
