package faintwind.calibration.beat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BeatTimesTest {
  private static final double PERIOD_S = 0.9375;

  @Test
  void evenTapsGiveTurnsAndTheirTimeExactly() {
    BeatTimes.Turning turning = value(BeatTimes.of(taps(81, 0, 1), 4)).turning();
    assertThat(turning.turns()).isEqualTo(20);
    assertThat(turning.time_s().value()).isCloseTo(75, within(1e-9));
    assertThat(turning.time_s().u().getAsDouble()).isLessThan(1e-6);
    assertThat(turning.steadiness().drift()).isCloseTo(0, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void missedAndDoubledTapsAreShownAndDoNotChangeTheCount(long seed) {
    List<Double> taps = taps(81, 0.03, seed);
    taps.remove(50);
    taps.remove(20);
    taps.add(taps.get(30) + 0.12);
    Checked<BeatTimes> found = BeatTimes.of(taps, 4);
    BeatTimes times = value(found);
    assertThat(times.missed()).isEqualTo(2);
    assertThat(times.doubled()).isEqualTo(1);
    assertThat(found.problems())
        .extracting(Problem::id)
        .containsExactlyInAnyOrder("beat.missed", "beat.missed", "beat.doubled");
    assertThat(times.turning().turns()).isEqualTo(20);
    assertThat(times.turning().time_s().value()).isCloseTo(75, within(0.15));
  }

  @Test
  void takingADoubledTapOutAndPuttingAMissedOneInLeavesNoDoubt() {
    List<Double> taps = taps(41, 0.02, 7);
    double missed_s = taps.remove(17);
    taps.add(taps.get(8) + 0.1);
    BeatTimes times = value(BeatTimes.of(taps, 4));
    double doubled_s =
        times.marks().stream()
            .filter(m -> m.kind() == TurnMark.Kind.DOUBLED)
            .findFirst()
            .orElseThrow()
            .time_s();
    Checked<BeatTimes> mended = value(times.without(doubled_s)).with(missed_s);
    assertThat(mended.problems()).isEmpty();
    assertThat(value(mended).turning().turns()).isEqualTo(10);
  }

  @Test
  void missedLastTapTakesTheLongestWholeTurnsThatAreThere() {
    List<Double> taps = taps(41, 0, 1);
    taps.remove(40);
    BeatTimes.Turning turning = value(BeatTimes.of(taps, 4)).turning();
    assertThat(turning.turns()).isEqualTo(9);
    assertThat(turning.time_s().value()).isCloseTo(36 * PERIOD_S, within(1e-9));
  }

  /** The error of a mean over many hands stays within what the uncertainty says. */
  @Test
  void statedUncertaintyCoversTheScatterOfTaps() {
    double squares = 0;
    int hands = 300;
    for (int seed = 0; seed < hands; seed++) {
      BeatTimes.Turning turning = value(BeatTimes.of(taps(81, 0.03, seed), 4)).turning();
      double off = (turning.time_s().value() - 75) / turning.time_s().u().getAsDouble();
      squares += off * off;
    }
    assertThat(Math.sqrt(squares / hands)).isBetween(0.5, 1.1);
  }

  @Test
  void slowingArmShowsItsDriftAndItEntersTheUncertainty() {
    List<Double> taps = new ArrayList<>();
    for (int k = 0; k <= 80; k++) {
      taps.add(PERIOD_S * (k + 0.05 * k * k / 160.0)); // gaps grow by 5 % from first to last
    }
    BeatTimes.Turning turning = value(BeatTimes.of(taps, 4)).turning();
    assertThat(turning.steadiness().drift()).isCloseTo(-0.049, within(0.002));
    double relative = turning.time_s().u().getAsDouble() / turning.time_s().value();
    assertThat(relative).isCloseTo(0.049 / Math.sqrt(12), within(0.002));
  }

  /** Six slow turns of the run-up pass for missed ones, were they counted: 6 % of the speed. */
  @Test
  void slowTurnsBeforeTheArmRunsSteadilyAreLeftOut() {
    List<Double> taps = new ArrayList<>();
    double time_s = 0;
    for (double slow : new double[] {3, 2.2, 2, 1.7, 1.4, 1.2}) {
      taps.add(time_s);
      time_s += slow * PERIOD_S;
    }
    taps(41, 0.005, 3).stream().map(t -> t + 11.5 * PERIOD_S).forEach(taps::add);
    Checked<BeatTimes> found = BeatTimes.of(taps, 1);
    BeatTimes.Turning turning = value(found).turning();
    assertThat(turning.time_s().value() / turning.turns()).isCloseTo(PERIOD_S, within(0.001));
    assertThat(turning.turns()).isBetween(38, 41);
    assertThat(found.problems()).extracting(Problem::id).contains("beat.outside");
  }

  /** How unsure the time is follows from the jitter, not from the luck of a parabola. */
  @Test
  void sameJitterGivesTheSameUncertainty() {
    double[] u =
        IntStream.range(0, 200)
            .mapToDouble(
                seed ->
                    value(BeatTimes.of(taps(81, 0.01, seed), 1)).turning().time_s().u().orElse(0))
            .sorted()
            .toArray();
    assertThat(u[180] / u[20]).isLessThan(2);
  }

  @Test
  void changingPaceAndTooManyMissedAreRefused() {
    List<Double> random = new ArrayList<>();
    RandomGenerator dice = new Well19937c(5);
    double time_s = 0;
    for (int k = 0; k < 40; k++) {
      time_s += Math.exp(1.5 * dice.nextGaussian());
      random.add(time_s);
    }
    assertThat(BeatTimes.of(random, 1).isOk()).isFalse();
    List<Double> few = taps(120, 0.001, 1);
    few.removeIf(t -> Math.round(t / PERIOD_S) % 5 > 1);
    assertThat(BeatTimes.of(few, 1).problems())
        .extracting(Problem::id)
        .containsExactly("beat.too-many-missed");
  }

  /**
   * The seconds of a sound are not those of the run file: its first click was written as theirs.
   */
  @Test
  void firstClickOfASoundIsKnownOnlyWhereItsBeginningIs() {
    BeatTimes.Turning turning = value(BeatTimes.of(taps(41, 0, 1), 1)).turning();
    assertThat(SpinTurns.heard(turning, OptionalDouble.empty()).first_s()).isEmpty();
    assertThat(SpinTurns.heard(turning, OptionalDouble.of(100)).first_s())
        .hasValue(100 + turning.first_s());
  }

  @Test
  void tooLittleIsRefusedInWords() {
    assertThat(BeatTimes.of(List.of(1.0, 2.0), 1).problems())
        .extracting(Problem::id)
        .containsExactly("beat.too-few");
    assertThat(BeatTimes.of(List.of(1.0, 2.0, 3.0), 4).problems())
        .extracting(Problem::id)
        .containsExactly("beat.no-whole-turn");
    assertThat(BeatTimes.of(List.of(1.0, 2.0, 3.0), 0).problems())
        .extracting(Problem::id)
        .containsExactly("beat.per-turn");
  }

  private static List<Double> taps(int count, double scatter_s, long seed) {
    RandomGenerator random = new Well19937c(seed);
    return new ArrayList<>(
        IntStream.range(0, count)
            .mapToObj(k -> k * PERIOD_S + scatter_s * random.nextGaussian())
            .toList());
  }

  private static BeatTimes value(Checked<BeatTimes> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }
}
