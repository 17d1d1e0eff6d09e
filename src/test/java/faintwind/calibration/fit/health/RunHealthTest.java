package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.List;
import org.junit.jupiter.api.Test;

class RunHealthTest {
  private static HeatBlock block(Phase phase, double ratio, double u) {
    return new HeatBlock(phase, 0, 100, ratio, u, 0, 20);
  }

  /** By hand: 1.00 ± 0.01 counts four times as much as 1.10 ± 0.02; (4 · 1 + 1.1)/5 = 1.02. */
  @Test
  void restsCountByTheirUncertaintyAndSpinsDoNot() {
    RunHealth run =
        new RunHealth(
            "a",
            List.of(
                block(Phase.BEFORE, 1, 0.01),
                block(Phase.TURNING, 3, 0.001),
                block(Phase.AFTER, 1.1, 0.02)));
    assertThat(run.rest().orElseThrow().ratio()).isCloseTo(1.02, within(1e-12));
  }

  @Test
  void aRunThatOnlyTurnsHasNoRest() {
    assertThat(new RunHealth("a", List.of(block(Phase.TURNING, 1, 0.01))).rest()).isEmpty();
  }

  @Test
  void theEndsOfARangeAreInIt() {
    PhysicsBounds.Range range = new PhysicsBounds.Range(0.7, 1.45);
    assertThat(range.has(0.7)).isTrue();
    assertThat(range.has(1.45)).isTrue();
    assertThat(range.has(0.699)).isFalse();
    assertThat(range.has(1.451)).isFalse();
  }

  /** Alike, so each counts a half: 0.02 that all share, and 0.01/√2 that is each one's own. */
  @Test
  void whatBlocksShareDoesNotAverageAway() {
    HeatBlock one = new HeatBlock(Phase.TURNING, 0, 100, 1, 0.01, 0.02, 20);
    double u = new RunHealth("a", List.of(one, one)).turning().orElseThrow().u();
    assertThat(u).isCloseTo(Math.sqrt(0.02 * 0.02 + 0.01 * 0.01 / 2), within(1e-12));
  }
}
