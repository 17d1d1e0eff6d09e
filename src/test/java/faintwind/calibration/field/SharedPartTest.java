package faintwind.calibration.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.TestCalibration;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SharedPartTest {
  private static final Calibration BY = TestCalibration.ofModel();

  /** The calibration's own table says the same of the same speeds: what is shared is no less. */
  @Test
  void sharedPartHoldsThatOfTheCalibration() {
    SharedPart parts = SharedPart.of(BY);
    for (AtSpeed at : BY.performance().speeds()) {
      assertThat(parts.shared_m_s(at.speed_m_s(), 9)).isGreaterThan(0.9 * at.u95_m_s());
    }
    assertThat(parts.isKnown()).isTrue();
    assertThat(parts.shared_m_s(0.2, 9)).isLessThan(0.2);
  }

  @Test
  void partsMakeTheWholeAgain() {
    SharedPart parts = SharedPart.of(BY);
    double whole = 3 * parts.shared_m_s(0.2, 9);
    double shared = parts.shared_m_s(0.2, whole);
    assertThat(Math.hypot(shared, parts.own_m_s(0.2, whole))).isCloseTo(whole, within(1e-12));
    assertThat(parts.shared_m_s(0.2, shared / 2)).isEqualTo(shared / 2);
    assertThat(SharedPart.unknown().own_m_s(0.2, whole)).isZero();
  }

  /** Noise goes with the root of the number of blocks, the calibration's part stays. */
  @Test
  void longerTimeTakesOffTheNoiseOnly() {
    SharedPart parts = SharedPart.of(BY);
    double whole = 3 * parts.shared_m_s(0.2, 9);
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (int t = 0; t < 100 * 60; t++) {
      rows.add(t, new SpeedRow(OptionalDouble.of(0.2), OptionalDouble.of(whole), Set.of()));
    }
    StretchMean.How how = new StretchMean.How(60, parts, StretchMean.Of.THIS_TIME);
    StretchMean mean = StretchMean.of(rows.build(), how).orElseThrow();
    assertThat(mean.shared_m_s()).isCloseTo(whole / 3, within(1e-9));
    assertThat(mean.own_m_s()).isCloseTo(parts.own_m_s(0.2, whole) / 10, within(1e-9));
  }
}
