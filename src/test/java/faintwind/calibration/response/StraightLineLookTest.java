package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.calibration.speed.TestCalibration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: signals that fall in straight lines from the start of the arm on. */
class StraightLineLookTest {
  private static final Calibration CALIBRATION = TestCalibration.ofModel();
  private static final Formula FORMULA = Formula.of(CALIBRATION);
  private static final AirPoint AIR = AirPoint.of(CALIBRATION.formula().referenceAir());
  private static final double STILL_K =
      FORMULA.steadyDelta_K(0, CALIBRATION.signal().supply_V(), AIR);
  private static final double STILL = FORMULA.signal(STILL_K, AIR.air_K());

  /** From a share of the full difference, falling by so much a second from 100 s on. */
  private static Run spin(String name, double speed_m_s, double share, double fall_1_s) {
    double turns = speed_m_s * 300 / (2 * Math.PI * MadeRuns.RADIUS_M);
    double zero = FORMULA.path().offset();
    double from = zero + share * (STILL - zero);
    Series signal = MadeRuns.series(0, 3, 600, t -> from - fall_1_s * Math.max(0, t - 100));
    return MadeRuns.spin(name, signal, MadeRuns.arm(100, 400, turns, 300));
  }

  /** (1 · 0.02 + 2 · 0.03) / (1² + 2²) = 0.016. */
  @Test
  void theLineIsForcedThroughZero() {
    StraightLineLook look =
        StraightLineLook.of(
            CALIBRATION, List.of(spin("a", 1, 0.98, 0.02), spin("b", 2, 0.98, 0.03)));
    assertThat(look.points()).extracting(StraightLineLook.Point::run).containsExactly("a", "b");
    assertThat(look.points().get(0).speed_m_s()).isCloseTo(1, within(1e-9));
    assertThat(look.points().get(0).slope_per_s()).isCloseTo(0.02, within(1e-9));
    assertThat(look.points().get(1).slope_per_s()).isCloseTo(0.03, within(1e-9));
    assertThat(look.slope_per_m()).isCloseTo(0.016, within(1e-9));
  }

  @Test
  void onlyASpinThatBeginsNearFullDifferenceCounts() {
    StraightLineLook look =
        StraightLineLook.of(
            CALIBRATION, List.of(spin("cold", 1, 0.88, 0.02), spin("warm", 1, 0.92, 0.02)));
    assertThat(look.points()).extracting(StraightLineLook.Point::run).containsExactly("warm");
  }

  @Test
  void withoutASpinThereIsNoLine() {
    Run still = MadeRuns.still("still", MadeRuns.series(0, 3, 600, t -> STILL));
    StraightLineLook look = StraightLineLook.of(CALIBRATION, List.of(still));
    assertThat(look.points()).isEmpty();
    assertThat(look.slope_per_m()).isZero();
    assertThat(look.errors()).allMatch(e -> e.relative() == 0);
  }

  /**
   * Cross-checked: from still air a ball goes to the level of the wind nearly by an exponential of
   * its rate there, of which the fall from 12 to 42 s is taken; the loss at the mean difference
   * stands for both, good to some per cent.
   */
  @Test
  void itsErrorsAreThoseAgainstTheFormula() {
    StraightLineLook look = StraightLineLook.of(CALIBRATION, List.of(spin("a", 1, 0.98, 0.02)));
    assertThat(look.errors())
        .extracting(StraightLineLook.Misreading::speed_m_s)
        .containsExactly(0.1, 0.3, 1.0, 3.0);
    for (StraightLineLook.Misreading error : look.errors()) {
      double fall = (1 + error.relative()) * 0.02 * error.speed_m_s();
      double end_K = FORMULA.steadyDelta_K(error.speed_m_s(), CALIBRATION.signal().supply_V(), AIR);
      double rate = FORMULA.loss_1_s(error.speed_m_s(), STILL_K - 2, AIR);
      double expected = (STILL_K - end_K) * (Math.exp(-12 * rate) - Math.exp(-42 * rate)) / 30;
      assertThat(fall).isCloseTo(expected, within(0.15 * expected));
    }
  }
}
