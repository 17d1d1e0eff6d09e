package faintwind.calibration.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: 9 g of 400 J/(kg K) are 3.6 J/K, and 4 % more of what fills the ball: 3.744 J/K. */
class BuiltHeatTest {
  private static BuildFacts facts(Optional<Uncertain> mass_kg, Optional<Uncertain> heat_J_kgK) {
    return new BuildFacts(
        Optional.empty(),
        mass_kg,
        heat_J_kgK,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        BuildFacts.Wires.NOT_KNOWN);
  }

  /** Mass 1 %, metal 2 %, filling 3 %: in quadrature √14 = 3.742 %. */
  @Test
  void capacityIsThatOfMetalAndFilling() {
    Uncertain capacity =
        BuiltHeat.capacity_J_K(
                facts(Optional.of(Uncertain.of(0.009)), Optional.of(Uncertain.of(400))))
            .orElseThrow();
    assertThat(capacity.value()).isCloseTo(3.744, within(1e-9));
    assertThat(capacity.u().orElseThrow()).isCloseTo(0.03742 * 3.744, within(1e-4));
    Uncertain stated =
        BuiltHeat.capacity_J_K(
                facts(Optional.of(Uncertain.of(0.01, 0.0004)), Optional.of(Uncertain.of(400, 0.0))))
            .orElseThrow();
    assertThat(stated.u().orElseThrow()).isCloseTo(0.05 * stated.value(), within(1e-9));
  }

  @Test
  void withoutMassOrMetalNothingIsKnown() {
    Optional<Uncertain> known = Optional.of(Uncertain.of(1));
    assertThat(BuiltHeat.capacity_J_K(facts(known, Optional.empty()))).isEmpty();
    assertThat(BuiltHeat.capacity_J_K(facts(Optional.empty(), known))).isEmpty();
  }

  @Test
  void anUncertaintyIsRelativeToTheSize() {
    assertThat(BuiltHeat.relative(Uncertain.of(-2, 0.1), 7)).isCloseTo(0.05, within(1e-12));
    assertThat(BuiltHeat.relative(Uncertain.of(-2), 7)).isEqualTo(7);
  }
}
