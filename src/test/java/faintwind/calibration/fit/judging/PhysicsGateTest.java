package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.message.Problem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** By hand: a fit moved beyond the bounds of {@code PhysicsBounds}, one at a time. */
class PhysicsGateTest {
  private static final double NATURAL = HealthyFit.value("natural");

  private static List<String> refused(Map<String, Double> values) {
    return new PhysicsGate(HealthyFit.moved(values)).refusals().stream().map(Problem::id).toList();
  }

  private static FitResult ratio(double ratio) {
    return HealthyFit.moved(Map.of("forced", ratio * NATURAL));
  }

  @Test
  void aHealthyFitMayStand() {
    assertThat(new PhysicsGate(FIT).refusals()).isEmpty();
    assertThat(PhysicsGate.caution(FIT)).isEmpty();
  }

  @Test
  void aRatioBeyondTheBoundsIsRefused() {
    assertThat(refused(Map.of("forced", 0.9, "natural", 0.6)))
        .containsExactly("fit.impossible.ratio");
    assertThat(refused(Map.of("forced", 0.8, "natural", 1.2)))
        .containsExactly("fit.impossible.ratio");
    assertThat(refused(Map.of("forced", 0.8, "natural", 1.0))).isEmpty();
  }

  @Test
  void eachNumberIsHeldAgainstItsOwnBounds() {
    assertThat(refused(Map.of("forced", 1.8, "natural", 1.5)))
        .containsExactly("fit.impossible.forced");
    assertThat(refused(Map.of("forced", 0.54, "natural", 0.6)))
        .containsExactly("fit.impossible.forced");
    assertThat(refused(Map.of("forced", 0.6, "natural", 0.44)))
        .containsExactly("fit.impossible.natural");
    assertThat(refused(Map.of("conduction", 7e-3))).contains("fit.impossible.conduction");
  }

  @Test
  void aRefusalNamesTheNumberAndItsRange() {
    Problem ratio =
        new PhysicsGate(HealthyFit.moved(Map.of("forced", 0.9, "natural", 0.6))).refusals().get(0);
    assertThat(ratio.found()).isEqualTo("1.50");
    assertThat(ratio.details()).containsExactly("0.700", "1.45");
  }

  @Test
  void leadsThatTakeNearlyAllAreRefused() {
    assertThat(refused(Map.of("leads", 1e-2))).contains("fit.impossible.leads");
  }

  /** Between the bounds and the usual range: a caution, with how far from 1 in per cent. */
  @Test
  void aRatioNearTheEndIsCautioned() {
    Problem strong = PhysicsGate.caution(ratio(1.35)).orElseThrow();
    assertThat(strong.id()).isEqualTo("fit.forced-strong");
    assertThat(strong.found()).isEqualTo("35.0");
    Problem weak = PhysicsGate.caution(ratio(0.75)).orElseThrow();
    assertThat(weak.id()).isEqualTo("fit.forced-weak");
    assertThat(weak.found()).isEqualTo("25.0");
  }

  /** A speed written twice as large as it was makes the forced part smaller by 2^0.54 = 1.454. */
  @Test
  void theSlipIsThatWhichBringsTheForcedPartToItsPlace() {
    assertThat(new PhysicsGate(ratio(1 / 1.454)).writtenOverTrue()).isCloseTo(2, within(0.002));
    assertThat(new PhysicsGate(ratio(1.454)).writtenOverTrue()).isCloseTo(0.5, within(0.001));
  }
}
