package faintwind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Performance.AtSpeed;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class Iso7726Test {
  @Test
  @DisplayName("0.5 m/s, class C: ±0.075 m/s (ISO 7726:1998 Table 2, from memory)")
  void requiredAccuracyIsThatOfTheTable() {
    assertThat(Iso7726.COMFORT.required_m_s(0.5)).isCloseTo(0.075, Offset.offset(1e-12));
    assertThat(Iso7726.STRESS.required_m_s(2)).isCloseTo(0.2, Offset.offset(1e-12));
  }

  @Test
  void onlySpeedsOfTheClassCountAndOnlyThoseWithinTheAccuracyPass() {
    List<AtSpeed> table =
        List.of(
            new AtSpeed(0.03, 0.001, 800, List.of()),
            new AtSpeed(0.1, 0.01, 700, List.of()),
            new AtSpeed(1, 0.2, 400, List.of()),
            new AtSpeed(2, 0.01, 300, List.of()));
    assertThat(Iso7726.COMFORT.inRange(table)).hasSize(2);
    assertThat(Iso7726.COMFORT.within(table)).extracting(AtSpeed::speed_m_s).containsExactly(0.1);
    assertThat(Iso7726.STRESS.within(table)).extracting(AtSpeed::speed_m_s).containsExactly(2.0);
  }
}
