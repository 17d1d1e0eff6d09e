package faintwind.calibration.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ControlChartTest {
  @Test
  void limitsAreThoseOfTheMovingRangeAndTheLastIsJudgedByTheOthers() {
    // neighbours differ by 0.2, 0.4, 0.2: mean 0.26667; 2.66 · 0.26667 = 0.70933
    ControlChart chart = ControlChart.of(List.of(30.0, 30.2, 29.8, 30.0, 28.9));
    assertThat(chart.mean()).isCloseTo(30.0, within(1e-12));
    assertThat(chart.high()).isCloseTo(30.70933, within(1e-5));
    assertThat(chart.low()).isCloseTo(29.29067, within(1e-5));
    assertThat(chart.outside()).hasValue(4);
    assertThat(ControlChart.of(List.of(30.0, 30.2, 29.8, 30.0, 30.1)).outside()).isEmpty();
  }

  @Test
  void fourValuesAreTooFew() {
    assertThatThrownBy(() -> ControlChart.of(List.of(1.0, 2.0, 3.0, 4.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 5");
  }
}
