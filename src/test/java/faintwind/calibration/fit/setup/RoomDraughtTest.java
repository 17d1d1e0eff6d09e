package faintwind.calibration.fit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: 10 mm/s, twice that in one run and half of it in the other. */
class RoomDraughtTest {
  private static final RoomDraught DRAUGHT = new RoomDraught(0, List.of(2, 3));
  private static final double[] VALUES = {0.01, 7, 2, 0.5};

  @Test
  void squaresCount() {
    // 10 mm/s times the root of (4 + 0.25) / 2
    assertThat(DRAUGHT.m_s(VALUES)).isCloseTo(0.014577, within(1e-6));
  }

  @Test
  void strongestRunMovesItMost() {
    // 1 / 0.01; 2 / 4.25; 0.5 / 4.25
    assertThat(DRAUGHT.relativeBy(VALUES))
        .containsExactly(new double[] {100, 0, 0.470588, 0.117647}, within(1e-6));
  }
}
