package faintwind.calibration.complete;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.speed.TestCalibration;
import faintwind.physics.AirState;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must hold of every vector: the heat balance of its own numbers. */
class TestVectorsTest {
  private static final Calibration CALIBRATION = TestCalibration.ofModel();
  private final List<TestVector> all = TestVectors.of(CALIBRATION);

  @Test
  void theyCoverTheCalibratedSpeeds() {
    assertThat(all).hasSize(20);
    assertThat(all.get(0).speed_m_s())
        .isCloseTo(CALIBRATION.coverage().lowest_m_s(), within(0.002));
    assertThat(all.get(19).speed_m_s())
        .isCloseTo(CALIBRATION.coverage().highest_m_s(), within(0.03));
    double ratio = Math.pow(30, 1 / 19.0);
    for (int i = 1; i < all.size(); i++) {
      assertThat(all.get(i).speed_m_s() / all.get(i - 1).speed_m_s())
          .isCloseTo(ratio, within(0.02 * ratio));
    }
  }

  /** At rest what is given is lost: heating · (V/V₀)² = loss · Δ, with Δ by the thermocouple. */
  @Test
  void aVectorWithoutChangeIsInBalance() {
    Formula formula = Formula.of(CALIBRATION);
    int atRest = 0;
    for (TestVector vector : all) {
      AirPoint air =
          AirPoint.of(
              new AirState(
                  vector.air_C() + 273.15, 100 * vector.pressure_hPa(), vector.rh_pct() / 100));
      double delta_K = formula.delta_K(vector.signal(), air.air_K());
      double bead_K_s = vector.rate() / formula.path().curve().signalByDelta(delta_K, air.air_K());
      double ball_K = delta_K + formula.path().beadTime_s() * bead_K_s;
      double given = formula.heating_K_s(vector.supply_V());
      double lost = formula.loss_1_s(vector.speed_m_s(), ball_K, air) * ball_K;
      assertThat(given - lost).isCloseTo(bead_K_s, within(2e-5 * given));
      atRest += vector.rate() == 0 ? 1 : 0;
    }
    assertThat(atRest).isEqualTo(7);
  }

  @Test
  void airAndSupplyAreOfSeveralKinds() {
    double reference_C = CALIBRATION.formula().referenceAir().temperature_K() - 273.15;
    assertThat(all.subList(0, 4))
        .extracting(v -> Math.round(v.air_C() - reference_C))
        .containsExactly(0L, 6L, -5L, 12L);
    assertThat(all.subList(0, 3))
        .extracting(TestVector::pressure_hPa)
        .containsExactly(1013.25, 950.0, 1030.0);
    assertThat(all.get(2).supply_V()).hasValue(4.925);
  }
}
