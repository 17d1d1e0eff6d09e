package faintwind.calibration.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.TestCalibration;
import faintwind.files.calibration.CalibrationFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SharedPartTest {
  private static final Calibration BY = TestCalibration.ofModel();

  /** The calibration's own table says the same of the same speeds: what is shared is no less. */
  @Test
  void sharedPartHoldsThatOfTheCalibration() throws IOException {
    Calibration measured =
        CalibrationFile.read(
                Path.of("demo-projects/cellar/calibrations/2026-09-13.json"), "calibration")
            .fold(
                (value, notes) -> value,
                problems -> {
                  throw new AssertionError(problems.toString());
                });
    SharedPart parts = SharedPart.of(measured);
    assertThat(measured.performance().speeds()).hasSizeGreaterThan(3);
    for (AtSpeed at : measured.performance().speeds()) {
      assertThat(parts.shared_m_s(at.speed_m_s(), 9) / at.u95_m_s()).isBetween(0.9, 2.5);
    }
    assertThat(parts.isKnown()).isTrue();
    assertThat(SharedPart.of(BY).shared_m_s(0.2, 9)).isBetween(0.001, 0.2);
  }

  /** It is read from a table, which must not show: a hundredth more speed moves it little. */
  @Test
  void sharedPartGoesSmoothlyWithTheSpeed() {
    SharedPart parts = SharedPart.of(BY);
    for (double speed_m_s = 0.05; speed_m_s < 10; speed_m_s *= 1.01) {
      double next = parts.shared_m_s(1.01 * speed_m_s, 9);
      assertThat(next / parts.shared_m_s(speed_m_s, 9)).isBetween(0.97, 1.04);
    }
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
