package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SignalHistoryTest {
  private static SignalHistory history(double step_s, int rows, DoubleUnaryOperator signal) {
    SignalHistory history = new SignalHistory();
    for (int i = 0; i < rows; i++) {
      history.add(step_s * i, signal.applyAsDouble(step_s * i));
    }
    return history;
  }

  @Test
  void anEmptyHistoryHasNoMean() {
    SignalHistory none = new SignalHistory();
    assertThat(none.isEmpty()).isTrue();
    assertThat(none.mean(0, 1e9)).isEmpty();
    assertThat(none.last_s()).isZero();
    assertThat(none.noise()).isZero();
  }

  /** 0 to 9 as they come; beyond the ends nothing was read. */
  @Test
  void meanIsThatOfTheRowsWithinAStretchItsEndsWithIt() {
    SignalHistory history = history(1, 10, t -> t);
    assertThat(history.isEmpty()).isFalse();
    assertThat(history.mean(2, 4)).hasValue(3);
    assertThat(history.mean(8.5, 100)).hasValue(9);
    assertThat(history.mean(4.2, 4.8)).isEmpty();
    assertThat(history.mean(10, 20)).isEmpty();
    assertThat(history.last_s()).isEqualTo(9);
    assertThat(history.last()).isEqualTo(9);
  }

  /** Ten rows a second: 3.0, 3.1 … 3.9 are kept as their mean at the last of them. */
  @Test
  void quickRowsAreKeptAsMeansOfASecond() {
    SignalHistory history = new SignalHistory();
    for (int i = 0; i < 100; i++) {
      history.add(i / 10.0, i / 10.0);
    }
    assertThat(history.mean(3.05, 3.95).orElseThrow()).isCloseTo(3.45, within(1e-12));
    assertThat(history.rowStep_s()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void slopeIsThatOfTheStretchAlone() {
    SignalHistory history = history(1, 100, t -> t < 50 ? 7 : 7 + 0.25 * (t - 50));
    assertThat(history.line(0, 50).getSlope()).isCloseTo(0, within(1e-12));
    assertThat(history.line(50, 99).getSlope()).isCloseTo(0.25, within(1e-12));
    assertThat(history.line(50, 99).getN()).isEqualTo(50);
  }

  /** Eleven rows in five points: three at a time, the last two together. */
  @Test
  void thinnedPointsAreMeansOfEqualNumbers() {
    var thin = history(1, 11, t -> t).thinned(4);
    assertThat(thin.size()).isEqualTo(4);
    assertThat(new double[] {thin.value(0), thin.value(1), thin.value(2), thin.value(3)})
        .containsExactly(new double[] {1, 4, 7, 9.5}, within(1e-12));
    assertThat(thin.time_s(0)).isEqualTo(2);
    assertThat(thin.time_s(3)).isEqualTo(10);
  }

  /**
   * Second differences of independent rows have 1 + 4 + 1 times their variance: +1, −1, +1 … bends
   * by ±4, so 4/√6.
   */
  @Test
  void noiseIsWhatBendsFromRowToRow() {
    assertThat(history(1, 200, t -> t % 2 == 0 ? 1 : -1).noise())
        .isCloseTo(4 / Math.sqrt(6), within(1e-12));
    assertThat(history(1, 200, t -> 3 * t).noise()).isCloseTo(0, within(1e-9));
    assertThat(history(1, 8, t -> t % 2 == 0 ? 1 : -1).noise()).isGreaterThan(1);
    assertThat(history(1, 7, t -> t % 2 == 0 ? 1 : -1).noise()).as("too few rows").isZero();
  }

  @Test
  void theLastRowsComeOldestFirstHoweverManyThereWere() {
    SignalHistory history = history(1, 300, t -> t);
    assertThat(history.lastRows(3)).containsExactly(297, 298, 299);
    assertThat(history.lastRows(1000)).hasSize(128).startsWith(172).endsWith(299);
    assertThat(history(1, 2, t -> t).lastRows(5)).containsExactly(0, 1);
  }

  @Test
  void aSignalThatStandsIsToldHowLongAndInHowManyRows() {
    SignalHistory history = history(2, 40, t -> t < 20 ? 0.5 * t : 10);
    assertThat(history.unchanged_s()).isEqualTo(58);
    assertThat(history.unchangedRows()).isEqualTo(30);
    assertThat(history.resolution()).isEqualTo(1);
    history.add(80, 10.25);
    assertThat(history.unchanged_s()).isZero();
    assertThat(history.unchangedRows()).isEqualTo(1);
    assertThat(history.resolution()).isEqualTo(0.25);
    assertThat(history(1, 5, t -> 3).resolution()).as("never a step").isZero();
    assertThat(history(1, 1, t -> 3).rowStep_s()).as("one row").isEqualTo(1);
  }

  @Test
  void aDayOfSecondsIsKept() {
    SignalHistory history = history(1, 86_400, t -> t);
    assertThat(history.mean(0, 0)).hasValue(0);
    assertThat(history.mean(4096, 4098)).hasValue(4097);
    assertThat(history.mean(86_399, 1e9)).hasValue(86_399);
  }
}
