package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exponentials, whose end and time constant are known. */
class WarmUpTrendTest {
  private static SignalHistory history(DoubleUnaryOperator signal) {
    SignalHistory history = new SignalHistory();
    for (int t = 0; t <= 1200; t++) {
      history.add(t, signal.applyAsDouble(t));
    }
    return history;
  }

  @ParameterizedTest(name = "to {0} in {1} s, from {2} s to {3} s")
  @CsvSource({"30, 300, 0, 600", "30, 300, 300, 1200", "-4, 600, 0, 1200", "30, 100, 90, 390"})
  void anExponentialIsToldExactly(double end, double time_s, double from_s, double to_s) {
    SignalHistory rising = history(t -> 2 + (end - 2) * (1 - Math.exp(-t / time_s)));
    WarmUpTrend trend = WarmUpTrend.of(rising, from_s, to_s).orElseThrow();
    assertThat(trend.settled()).isCloseTo(end, within(1e-6));
    assertThat(trend.time_s()).isCloseTo(time_s, within(1e-6 * time_s));
  }

  @Test
  void nothingIsToldOfLessThanNinetySeconds() {
    SignalHistory rising = history(t -> 30 * (1 - Math.exp(-t / 100)));
    assertThat(WarmUpTrend.of(rising, 0, 90)).isPresent();
    assertThat(WarmUpTrend.of(rising, 0, 87)).isEmpty();
    assertThat(WarmUpTrend.of(rising, 2000, 3000)).as("nothing was read").isEmpty();
  }

  /** A third of the stretch over the time constant: e^(−0.02) = 0.98, e^(−0.04) = 0.96. */
  @Test
  void whatDoesNotBendHasNoEnd() {
    assertThat(WarmUpTrend.of(history(t -> 0.1 * t), 0, 900)).as("straight").isEmpty();
    assertThat(WarmUpTrend.of(history(t -> t * t), 0, 900)).as("quicker and quicker").isEmpty();
    assertThat(WarmUpTrend.of(history(t -> (t - 450) * (t - 450)), 0, 900)).as("turns").isEmpty();
    assertThat(WarmUpTrend.of(history(t -> Math.exp(-t / 15_000)), 0, 900)).isEmpty();
    assertThat(WarmUpTrend.of(history(t -> Math.exp(-t / 7500)), 0, 900)).isPresent();
  }
}
