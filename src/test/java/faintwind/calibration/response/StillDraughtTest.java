package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StillDraughtTest {
  @ParameterizedTest(name = "{0} m/s where a draught of {1} m/s was found")
  @CsvSource({
    // by hand: the larger of the root of V² + D² less V, and V less the root of V² - D²
    "0,    0.02, 0.02",
    "0.01, 0.02, 0.012361",
    "0.02, 0.02, 0.02",
    "0.03, 0.02, 0.007639",
    "0.1,  0.02, 0.002020",
    "1,    0.02, 0.000200",
    "0.05, 0,    0",
  })
  void draughtCountsAsASquare(double speed_m_s, double draught_m_s, double u95_m_s) {
    assertThat(StillDraught.u95_m_s(speed_m_s, draught_m_s)).isCloseTo(u95_m_s, within(1e-6));
  }
}
