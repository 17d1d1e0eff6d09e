package faintwind.calibration.fit.wander;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RoomBoundsTest {
  /** The strongest of the ten sample benches, classroom gear. */
  private static final Wander CLASSROOM = wander(0.0088, 0.0077, 0.0088, 9);

  /** What a gain that was switched between two runs asked for while nothing bound it. */
  private static final Wander SWITCHED = new Wander(9.3, 0.155, 0.3, 1.2, 86);

  private static Wander wander(
      double rest_s, double turning_s, double draught_m_s, double memory_s) {
    return new Wander(rest_s, turning_s, Wander.strength_m2_s(draught_m_s, memory_s), 1, memory_s);
  }

  @Test
  void classroomGearIsFarFromTheBounds() {
    assertThat(RoomBounds.within(CLASSROOM)).isEqualTo(CLASSROOM);
    assertThat(RoomBounds.isAtMost(CLASSROOM)).isFalse();
    assertThat(RoomBounds.isAtMost(wander(0.0264, 0.0231, 0.0264, 9))).isFalse();
  }

  @Test
  void switchedGainIsBoundAndAtItsBound() {
    Wander bound = RoomBounds.within(SWITCHED);
    assertThat(bound.rest_s()).isEqualTo(0.4);
    assertThat(bound.turning_s()).isEqualTo(0.1);
    assertThat(bound.draught_m_s()).isCloseTo(0.03, within(1e-12));
    assertThat(bound.memory_s()).isEqualTo(86);
    assertThat(RoomBounds.isAtMost(bound)).isTrue();
  }

  @Test
  void eachAloneIsAtItsBound() {
    assertThat(RoomBounds.isAtMost(wander(0.4, 0.01, 0.007, 20))).isTrue();
    assertThat(RoomBounds.isAtMost(wander(0.01, 0.1, 0.007, 20))).isTrue();
    assertThat(RoomBounds.isAtMost(wander(0.01, 0.01, 0.03, 20))).isTrue();
  }

  @Test
  void noRoomIsWithoutDraughtAndNoneForgetsItAtOnce() {
    Wander calm = RoomBounds.within(wander(0, 0, 0.0001, 0.1));
    assertThat(calm.draught_m_s()).isCloseTo(0.002, within(1e-12));
    assertThat(calm.memory_s()).isEqualTo(3);
    assertThat(RoomBounds.isAtMost(calm)).isFalse();
  }

  @Test
  void whatIsBoundStays() {
    Wander bound = RoomBounds.within(SWITCHED);
    assertThat(RoomBounds.within(bound)).isEqualTo(bound);
  }

  @Test
  void memoryFarFromTwentySecondsIsUnlikely() {
    assertThat(RoomBounds.deviance(wander(0.01, 0.01, 0.007, 20))).isZero();
    assertThat(RoomBounds.deviance(wander(0.01, 0.01, 0.007, 20 * Math.E)))
        .isCloseTo(1, within(1e-12));
  }
}
