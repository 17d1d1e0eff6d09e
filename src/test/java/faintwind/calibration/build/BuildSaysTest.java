package faintwind.calibration.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import faintwind.physics.AirState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * By hand: 5 V over 100 Ω are 0.25 W; 9 g of 400 J/(kg K) and 4 % more are 3.744 J/K, so that the
 * ball warms by 66.77 mK a second before it loses anything.
 */
class BuildSaysTest {
  private static final double HEATING_K_S = 0.25 / 3.744;

  private static BuildFacts facts(Optional<Uncertain> ohm, Optional<Uncertain> leads_W_K) {
    return new BuildFacts(
        Optional.of(Uncertain.of(0.0127, 0.0001)),
        Optional.of(Uncertain.of(0.009, 0.00009)),
        Optional.of(Uncertain.of(400, 8)),
        ohm,
        Optional.of(Uncertain.of(5, 0.05)),
        Optional.empty(),
        new BuildFacts.Wires(leads_W_K, Optional.empty()));
  }

  private static BuildSays says(OptionalDouble supply_V, OptionalDouble scale) {
    return BuildSays.of(
            facts(Optional.of(Uncertain.of(100, 1)), Optional.of(Uncertain.of(1e-3, 5e-4))),
            supply_V,
            AirState.ROOM,
            scale)
        .orElseThrow();
  }

  private static BuildSays says() {
    return says(OptionalDouble.empty(), OptionalDouble.of(1));
  }

  private static double value(BuildSays says, BuildQuantity quantity) {
    return Math.exp(says.log(quantity));
  }

  @Test
  void theRecordSaysHowFastTheBallWarms() {
    assertThat(value(says(), BuildQuantity.HEATING)).isCloseTo(HEATING_K_S, within(1e-9));
    assertThat(value(says(), BuildQuantity.GLUE_TIME)).isCloseTo(10, within(1e-9));
  }

  /** At 6 V in the recordings the record's 5 V do not count: 1.44 times the heat. */
  @Test
  void aRecordedSupplyCountsBeforeTheRecords() {
    assertThat(value(says(OptionalDouble.of(6), OptionalDouble.of(1)), BuildQuantity.HEATING))
        .isCloseTo(1.44 * HEATING_K_S, within(1e-9));
  }

  @Test
  void kelvinOfTheFitScaleWhatIsInKelvin() {
    BuildSays scaled = says(OptionalDouble.empty(), OptionalDouble.of(1.1));
    assertThat(scaled.scale()).isEqualTo(1.1);
    for (BuildQuantity inKelvin : List.of(BuildQuantity.HEATING, BuildQuantity.STILL)) {
      assertThat(value(scaled, inKelvin)).isCloseTo(1.1 * value(says(), inKelvin), within(1e-9));
    }
    assertThat(value(scaled, BuildQuantity.TIME_CONSTANT))
        .isCloseTo(value(says(), BuildQuantity.TIME_CONSTANT), within(1e-9));
  }

  /**
   * In balance the power goes: the leads' share of it and the rest; the time is Δ over its rate.
   */
  @Test
  void stillAirTimeAndLeadsHangTogether() {
    double still_K = value(says(), BuildQuantity.STILL);
    assertThat(still_K).isBetween(20.0, 60.0);
    assertThat(value(says(), BuildQuantity.TIME_CONSTANT))
        .isCloseTo(still_K / HEATING_K_S, within(1e-6));
    assertThat(value(says(), BuildQuantity.LEAD_SHARE))
        .isCloseTo(1e-3 * still_K / 0.25, within(1e-9));
  }

  /** P/C: twice the supply's logarithm, less that of resistor, mass, metal and filling. */
  @Test
  void heatingMovesWithItsParts() {
    assertThat(says().slope(BuildPart.SUPPLY, BuildQuantity.HEATING)).isCloseTo(2, within(1e-9));
    assertThat(says().slope(BuildPart.RESISTOR, BuildQuantity.HEATING)).isCloseTo(-1, within(1e-9));
    assertThat(says().slope(BuildPart.MASS, BuildQuantity.HEATING)).isCloseTo(-1, within(1e-9));
    assertThat(says().slope(BuildPart.LEADS, BuildQuantity.HEATING)).isCloseTo(0, within(1e-9));
    assertThat(says().slope(BuildPart.LEADS, BuildQuantity.STILL)).isBetween(-0.5, -0.01);
  }

  /** Supply 1 % twice, resistor and mass 1 %, metal 2 %, filling and scale 3 %, in quadrature. */
  @Test
  void uncertaintiesOfTheParts() {
    double expected = 4e-4 + 1e-4 + 1e-4 + 4e-4 + 9e-4 + 9e-4;
    assertThat(says().covariance(BuildQuantity.HEATING, BuildQuantity.HEATING))
        .isCloseTo(expected, within(1e-8));
    assertThat(says().covariance(BuildQuantity.HEATING, BuildQuantity.GLUE_TIME))
        .isCloseTo(0, within(1e-12));
    assertThat(
            says(OptionalDouble.of(5), OptionalDouble.of(1))
                .covariance(BuildQuantity.HEATING, BuildQuantity.HEATING))
        .isCloseTo(expected - 4e-4 + 64e-6, within(1e-8));
  }

  @Test
  void aRecordThatSaysTooLittleSaysNothing() {
    Optional<Uncertain> ohm = Optional.of(Uncertain.of(100));
    Optional<Uncertain> leads = Optional.of(Uncertain.of(1e-3));
    OptionalDouble none = OptionalDouble.empty();
    assertThat(BuildSays.of(facts(Optional.empty(), leads), none, AirState.ROOM, none)).isEmpty();
    assertThat(BuildSays.of(facts(ohm, Optional.empty()), none, AirState.ROOM, none)).isEmpty();
    assertThat(BuildSays.of(facts(ohm, leads), none, AirState.ROOM, none)).isPresent();
  }

  private static BuildAgreement met(double heating, double still) {
    BuildSays says = says();
    FoundByFit fit =
        new FoundByFit(
            Uncertain.of(heating * value(says, BuildQuantity.HEATING), 1e-4),
            Uncertain.of(still * value(says, BuildQuantity.STILL), 0.1),
            Optional.empty(),
            Optional.empty(),
            -40);
    return MeetTheBuild.of(says, fit);
  }

  private static Row row(BuildAgreement agreement, BuildQuantity quantity) {
    return agreement.rows().stream()
        .filter(r -> r.quantity() == quantity)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aFitAsTheBuildSaysAgrees() {
    BuildAgreement agreement = met(1, 1);
    assertThat(agreement.disagrees()).isFalse();
    assertThat(agreement.suspects()).isEmpty();
    assertThat(agreement.rows())
        .extracting(Row::quantity)
        .containsExactly(
            BuildQuantity.HEATING,
            BuildQuantity.STILL,
            BuildQuantity.TIME_CONSTANT,
            BuildQuantity.SIGNAL_PER_K);
    assertThat(row(agreement, BuildQuantity.HEATING).en().value()).isCloseTo(0, within(1e-9));
    assertThat(row(agreement, BuildQuantity.SIGNAL_PER_K).found()).isCloseTo(40, within(1e-6));
    assertThat(row(agreement, BuildQuantity.SIGNAL_PER_K).judged()).isFalse();
  }

  /** Eₙ is the difference of the logarithms over twice both uncertainties in quadrature. */
  @Test
  void aDifferenceIsHeldAgainstBothUncertainties() {
    Row heating = row(met(1.3, 1.3), BuildQuantity.HEATING);
    double u_says = Math.sqrt(4e-4 + 1e-4 + 1e-4 + 4e-4 + 9e-4 + 9e-4);
    double u_found = 1e-4 / (1.3 * HEATING_K_S);
    assertThat(heating.off()).isCloseTo(0.3, within(1e-9));
    assertThat(heating.en().value())
        .isCloseTo(Math.log(1.3) / (2 * Math.hypot(u_says, u_found)), within(1e-6));
    assertThat(heating.agrees()).isFalse();
    assertThat(row(met(1.3, 1.3), BuildQuantity.SIGNAL_PER_K).found()).isCloseTo(52, within(1e-6));
  }

  /** A third more power warms faster and comes to rest higher; another scale moves both alike. */
  @Test
  void whatMovesBothAlikeIsTheScale() {
    BuildAgreement agreement = met(1.3, 1.3);
    assertThat(agreement.disagrees()).isTrue();
    double sum = agreement.suspects().stream().mapToDouble(s -> s.weight()).sum();
    assertThat(sum).isCloseTo(1, within(1e-9));
    BuildAgreement.Suspicion scale =
        agreement.suspects().stream()
            .filter(s -> s.suspect() == BuildSuspect.THERMOCOUPLE)
            .findFirst()
            .orElseThrow();
    assertThat(scale.explains()).isTrue();
    assertThat(scale.factor()).isBetween(1.2, 1.35);
    BuildAgreement.Suspicion glue =
        agreement.suspects().stream()
            .filter(s -> s.suspect() == BuildSuspect.GLUE)
            .findFirst()
            .orElseThrow();
    assertThat(glue.explains()).isFalse();
    assertThat(glue.factor()).isCloseTo(1, within(1e-6));
    assertThat(glue.weight()).isLessThan(0.1 * scale.weight());
  }

  /** More still-air difference at the same warm-up: less is lost, not more given. */
  @Test
  void whatMovesStillAirAloneIsNotTheSupply() {
    BuildAgreement agreement = met(1, 2);
    assertThat(agreement.disagrees()).isTrue();
    assertThat(agreement.suspects().get(0).suspect()).isNotEqualTo(BuildSuspect.SUPPLY);
    assertThat(
            agreement.suspects().stream()
                .filter(s -> s.suspect() == BuildSuspect.SUPPLY)
                .findFirst()
                .orElseThrow()
                .explains())
        .isFalse();
  }
}
