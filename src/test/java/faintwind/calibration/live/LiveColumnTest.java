package faintwind.calibration.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.speed.LogAir;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** By hand: 20 °C, 1000 hPa, 45 %, 5 V, terminals at 25 °C. */
class LiveColumnTest {
  @Test
  void valuesAreInTheUnitOfTheirColumn() {
    LiveSample sample =
        new LiveSample(
            OptionalDouble.of(1),
            OptionalDouble.of(2),
            new LogAir(
                OptionalDouble.of(293.15), OptionalDouble.of(100_000), OptionalDouble.of(0.45)),
            OptionalDouble.of(5),
            OptionalDouble.of(298.15));
    assertThat(LiveColumn.AIR.value(sample).orElseThrow()).isCloseTo(20, within(1e-9));
    assertThat(LiveColumn.PRESSURE.value(sample).orElseThrow()).isCloseTo(1000, within(1e-9));
    assertThat(LiveColumn.HUMIDITY.value(sample).orElseThrow()).isCloseTo(45, within(1e-9));
    assertThat(LiveColumn.SUPPLY.value(sample)).hasValue(5);
    assertThat(LiveColumn.TERMINAL.value(sample).orElseThrow()).isCloseTo(25, within(1e-9));
    assertThat(LiveColumn.HUMIDITY.column()).isEqualTo("rh_pct");
  }

  @Test
  void whatWasNotReadIsNotThere() {
    OptionalDouble none = OptionalDouble.empty();
    LiveSample sample = new LiveSample(none, none, new LogAir(none, none, none), none, none);
    for (LiveColumn column : LiveColumn.values()) {
      assertThat(column.value(sample)).isEmpty();
    }
  }
}
