package faintwind.calibration.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Messages;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records whose zero, drift, noise, mains and rises are known because they were made up. */
class BenchRecordTest {
  private static final long SEED = 424242;

  private static Series series(
      double length_s, double rate_Hz, double noise, DoubleUnaryOperator f) {
    SplittableRandom random = new SplittableRandom(SEED);
    int n = (int) Math.round(length_s * rate_Hz) + 1;
    double[] t = new double[n];
    double[] v = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = i / rate_Hz;
      v[i] = f.applyAsDouble(t[i]) + noise * random.nextGaussian();
    }
    return Series.of(t, v);
  }

  private static QuietRecord quiet(Series series) {
    return value(QuietRecord.of(series));
  }

  private static <T> T value(Checked<T> checked) {
    assertThat(checked.isOk()).as(checked.problems().toString()).isTrue();
    return ((Checked.Ok<T>) checked).value();
  }

  @Test
  void meanDriftAndScatterAreThoseThatWerePutIn() {
    QuietRecord r = quiet(series(300, 4, 1.5, t -> 20 + 0.01 * (t - 150)));
    assertThat(r.mean()).isCloseTo(20, within(0.2));
    assertThat(r.drift_per_s()).isCloseTo(0.01, within(0.002));
    assertThat(r.scatter()).isCloseTo(1.5, within(0.1));
    assertThat(r.pickUp()).isEmpty();
    assertThat(r.corner_Hz()).isEmpty();
    assertThat(r.input()).isEqualTo(QuietRecord.Input.STEADY);
  }

  @ParameterizedTest(name = "{0} Hz mains at {1} rows a second stands at {2} Hz")
  @CsvSource({"50, 7, 1", "60, 7, 3", "50, 200, 50", "60, 100, 40", "50, 18, 4"})
  void mainsPickUpIsFoundWhereItFoldsTo(int mains, double rate_Hz, double folded_Hz) {
    QuietRecord r = quiet(series(300, rate_Hz, 1, t -> Math.sin(2 * Math.PI * mains * t + 1)));
    PickUp pickUp = r.pickUp().orElseThrow();
    assertThat(pickUp.frequency_Hz()).isCloseTo(folded_Hz, within(0.02));
    assertThat(pickUp.amplitude()).isCloseTo(1, within(0.2));
    assertThat(pickUp.mains_Hz()).hasValue(mains);
    assertThat(r.corner_Hz()).as("mains is no 1/f noise").isEmpty();
  }

  @Test
  void anOscillationElsewhereIsNotCalledMains() {
    QuietRecord r = quiet(series(300, 7, 0.5, t -> Math.sin(2 * Math.PI * 0.21 * t)));
    assertThat(r.pickUp().orElseThrow().mains_Hz()).isEmpty();
  }

  @Test
  void aRateThatFoldsMainsOntoZeroSaysThatItIsBlind() {
    assertThat(quiet(series(300, 1, 1, t -> 0)).blindTo()).containsExactly(50, 60);
    assertThat(quiet(series(300, 10, 1, t -> 0)).blindTo()).containsExactly(50, 60);
    assertThat(quiet(series(300, 7, 1, t -> 0)).blindTo()).isEmpty();
  }

  @Test
  void whiteNoiseShowsNoMainsAndNoCorner() {
    SplittableRandom seeds = new SplittableRandom(SEED);
    int accused = 0;
    for (int i = 0; i < 200; i++) {
      long seed = seeds.nextLong();
      SplittableRandom random = new SplittableRandom(seed);
      double[] t = new double[600];
      double[] v = new double[600];
      for (int k = 0; k < 600; k++) {
        t[k] = k / 2.0;
        v[k] = random.nextGaussian();
      }
      QuietRecord r = quiet(Series.of(t, v));
      accused += r.pickUp().isPresent() || r.corner_Hz().isPresent() ? 1 : 0;
    }
    assertThat(accused).as("of 200, chance alone gives about two").isLessThan(8);
  }

  /** A random walk has a density of a / f², white noise b: they meet at √(a/b). */
  @Test
  void noiseThatGrowsTowardsLowFrequenciesHasACorner() {
    SplittableRandom random = new SplittableRandom(SEED);
    double[] t = new double[4096];
    double[] v = new double[4096];
    double walk = 0;
    for (int i = 0; i < t.length; i++) {
      t[i] = i / 10.0;
      walk += 0.15 * random.nextGaussian();
      v[i] = walk + random.nextGaussian();
    }
    assertThat(quiet(Series.of(t, v)).corner_Hz().orElseThrow()).isBetween(0.1, 2.0);
  }

  @Test
  void anInputThatRunsToTheEndOfItsRangeIsSaid() {
    QuietRecord floats = quiet(series(300, 4, 0, t -> Math.min(100, Math.rint(t * 0.9))));
    assertThat(floats.input()).isEqualTo(QuietRecord.Input.AT_AN_END);
    QuietRecord wanders = quiet(series(300, 4, 1, t -> 0.2 * t));
    assertThat(wanders.input()).isEqualTo(QuietRecord.Input.WANDERS);
    QuietRecord stuck = quiet(series(300, 4, 0, t -> 7));
    assertThat(stuck.input()).isEqualTo(QuietRecord.Input.STUCK);
    assertThat(stuck.scatter()).isZero();
  }

  @Test
  void aRecordTooShortIsRefusedInWords() {
    Checked<QuietRecord> refused = QuietRecord.of(series(30, 4, 1, t -> 0));
    assertThat(Messages.of(Locale.ENGLISH).sentence(refused.problems().get(0)))
        .contains("30 s")
        .contains("60 s");
    assertThat(HeaterOn.in(series(100, 4, 1, t -> 0)).isOk()).isFalse();
    assertThat(BreathDrop.in(series(10, 4, 1, t -> 0)).isOk()).isFalse();
    assertThat(QuietRecord.of(Series.of(new double[0], new double[0])).isOk()).isFalse();
  }

  @ParameterizedTest(name = "switched on at {0} s, rising {1} µV a second")
  @CsvSource({"60, 2.8", "200, 2.8", "40, -2.8", "30, 0.3"})
  void theHeaterIsFoundAndItsRiseRead(double on_s, double slope) {
    HeaterOn on =
        value(HeaterOn.in(series(on_s + 200, 2, 1, t -> 5 + slope * Math.max(0, t - on_s))));
    assertThat(on.on_s()).isCloseTo(on_s, within(12.0));
    assertThat(on.change()).isCloseTo(120 * slope, within(Math.abs(slope) * 14 + 2));
  }

  @Test
  void aHeaterThatStayedOffChangesNothing() {
    assertThat(value(HeaterOn.in(series(400, 2, 1, t -> 5))).change()).isCloseTo(0, within(1.5));
  }

  @Test
  void aBreathIsFoundWithinItsMinute() {
    Series s =
        series(
            300, 2, 1, t -> 1200 - (t > 150 && t < 200 ? 80 * (1 - Math.exp((150 - t) / 15)) : 0));
    BreathDrop drop = value(BreathDrop.in(s));
    assertThat(drop.drop()).isCloseTo(77, within(6.0));
    assertThat(drop.from_s()).isBetween(85.0, 155.0);
    assertThat(value(BreathDrop.in(series(100, 2, 0, t -> t))).drop()).isZero();
  }
}
