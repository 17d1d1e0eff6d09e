package faintwind.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.speed.TestCalibration;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: the words and small sums of what a calibration says. */
class CalibrationRecordsTest {
  private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-01-01T12:00:00Z");

  private static Parameter number(String name, double value, double u, String unit) {
    return new Parameter(name, value, u, unit);
  }

  private static Coverage coverage() {
    return new Coverage(0.1, 2, 5, 30, true, Optional.empty());
  }

  @Test
  void aSpeedIsBeyondTheCalibratedOnesByMoreThanAThousandth() {
    assertThat(coverage().isBeyond(0.1)).isFalse();
    assertThat(coverage().isBeyond(0.09991)).isFalse();
    assertThat(coverage().isBeyond(0.09989)).isTrue();
    assertThat(coverage().isBeyond(2.0019)).isFalse();
    assertThat(coverage().isBeyond(2.0021)).isTrue();
  }

  @Test
  void theArmIsListedWithWhatWasShownOfIt() {
    ArmShown arm =
        new ArmShown(
            number("carried_share", 0.0312, 0.0051, "1"),
            number("carried_rise", 21.3, 8, "s"),
            number("carried_decay", 24.6, 6, "s"),
            number("run_up", 2, 0.3, "s"),
            number("draught", 0.01, 0.005, "m/s"),
            Optional.of(number("asymmetry", 0.001, 0.001, "1")));
    assertThat(arm.all())
        .extracting(Parameter::name)
        .containsExactly(
            "carried_share", "carried_rise", "carried_decay", "run_up", "draught", "asymmetry");
    assertThat(arm.carriedAir()).containsExactly("3.1", "0.51", "21", "8", "25", "6");
  }

  @Test
  void wordsAreThoseOfTheFiles() {
    assertThat(BuildQuantity.LEAD_SHARE.word()).isEqualTo("lead-share");
    assertThat(BuildQuantity.GLUE_TIME.unit()).isEqualTo("s");
    assertThat(BuildSuspect.BALL_SIZE.word()).isEqualTo("ball-size");
    assertThat(Measured.Basis.STATED.word()).isEqualTo("stated");
    assertThat(Measured.By.OPERATOR.word()).isEqualTo("operator");
  }

  @Test
  void whatIsBlankIsNotKnown() {
    Measured measured =
        new Measured(
            NOON,
            NOON.plusHours(1),
            Measured.Basis.RECORDINGS,
            Map.of(Measured.By.PLACE, " cellar ", Measured.By.ARM, " "));
    assertThat(measured.by(Measured.By.PLACE)).contains("cellar");
    assertThat(measured.by(Measured.By.ARM)).isEmpty();
    assertThat(measured.by().keySet()).containsExactly(Measured.By.PLACE);
    assertThatThrownBy(
            () -> new Measured(NOON.plusHours(1), NOON, Measured.Basis.RECORDINGS, Map.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aCalibrationCountsFromTheEndOfItsMeasurement() {
    Origin origin = new Origin("a", NOON, "test", Map.of());
    assertThat(origin.validFrom()).isEqualTo(NOON);
    Measured measured =
        new Measured(NOON.minusDays(2), NOON.minusDays(1), Measured.Basis.STATED, Map.of());
    Origin known =
        new Origin(
            "a", NOON, "test", Map.of(), Optional.empty(), Optional.of(measured), Optional.empty());
    assertThat(known.validFrom()).isEqualTo(NOON.minusDays(1));
    Pooled pooled = new Pooled(List.of(new Pooled.Other("b", "00")), List.of());
    assertThat(known.with(pooled).pooled()).contains(pooled);
    assertThat(known.with(pooled).validFrom()).isEqualTo(NOON.minusDays(1));
  }

  @Test
  void aRehearsalIsKnownByItsNote() {
    Calibration real = TestCalibration.ofModel();
    assertThat(real.rehearsal()).isFalse();
    assertThat(noted(real, Calibration.REHEARSAL).rehearsal()).isTrue();
    assertThat(noted(real, "fit.gap").rehearsal()).isFalse();
    assertThat(real.validRange()).containsExactly("0.1", "3", "5", "32", "K", "20", "1000");
  }

  private static Calibration noted(Calibration real, String id) {
    return new Calibration(
        real.origin(),
        real.signal(),
        real.formula(),
        real.coverage(),
        real.evidence(),
        real.performance(),
        List.of(Problem.warning(id, Where.NOWHERE, "")));
  }

  /** gᵀ C g = 4 + 2 · 2 · 3 · 1 + 9 · 9, of (2, 3) and (1 1; 1 9). */
  @Test
  void aCovarianceIsSymmetricAndGivesVariances() {
    Covariance covariance = Covariance.of(new double[][] {{1, 0}, {2, 9}});
    assertThat(covariance.at(0, 1)).isEqualTo(1);
    assertThat(covariance.variance(new double[] {2, 3})).isCloseTo(97, within(1e-12));
    assertThat(covariance.of(1).at(0, 0)).isEqualTo(9);
    assertThat(covariance.rows()).containsExactly(List.of(1.0, 1.0), List.of(1.0, 9.0));
    assertThatThrownBy(() -> Covariance.of(new double[][] {{1, 0}}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Covariance.of(new double[][] {{Double.NaN}}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
