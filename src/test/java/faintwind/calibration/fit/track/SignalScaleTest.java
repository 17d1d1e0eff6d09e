package faintwind.calibration.fit.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SignalScaleTest {
  private static SignalChain chain(OptionalDouble gain, int sign) {
    return new SignalChain(
        SignalChain.Input.VOLTAGE,
        Optional.empty(),
        gain,
        OptionalDouble.empty(),
        sign,
        SignalChain.AS_IS.resolution());
  }

  private static double perKelvin(
      SignalUnit unit, OptionalDouble gain, int sign, Optional<String> letter, double largest) {
    return SignalScale.perKelvin(unit, chain(gain, sign), letter, 293.15, largest);
  }

  @Test
  void kelvinAreKelvinButForTheirSign() {
    assertThat(perKelvin(SignalUnit.DELTA_K, OptionalDouble.empty(), -1, Optional.empty(), 20))
        .isEqualTo(-1);
  }

  /** The largest count stands for 30 K. */
  @Test
  void countsAreScaledByTheLargest() {
    assertThat(
            perKelvin(SignalUnit.SIGNAL_COUNTS, OptionalDouble.empty(), 1, Optional.empty(), -600))
        .isEqualTo(20);
  }

  /** From memory (IEC 60584): type K gives 40.3 µV/K near 20 °C, type T 40.3, type E 60.5. */
  @Test
  void theLetterAndTheGainGiveTheScale() {
    assertThat(perKelvin(SignalUnit.SIGNAL_MV, OptionalDouble.of(100), -1, Optional.of("K"), 60))
        .isCloseTo(-4.03, within(0.03));
    assertThat(perKelvin(SignalUnit.SIGNAL_UV, OptionalDouble.of(1), 1, Optional.of("E"), 60))
        .isCloseTo(60.5, within(0.5));
  }

  /** 0.12 V at 40 µV/K are 3000 K without a gain: a hundred makes them 30. */
  @Test
  void withoutAGainItIsAPowerOfTen() {
    assertThat(perKelvin(SignalUnit.SIGNAL_V, OptionalDouble.empty(), 1, Optional.empty(), 0.12))
        .isCloseTo(4e-3, within(1e-12));
    assertThat(perKelvin(SignalUnit.SIGNAL_V, OptionalDouble.empty(), 1, Optional.empty(), 0.0012))
        .isCloseTo(4e-5, within(1e-15));
  }

  /** Rows of ±1 in turn have second differences of 4: 1.4826 · 4 / √6. */
  @Test
  void noiseComesFromSecondDifferences() {
    Series alternating = MadeRuns.series(0, 1, 50, t -> t % 2 == 0 ? 1 : -1);
    assertThat(Spikes.noise(alternating)).isCloseTo(2.4211, within(1e-4));
    assertThat(Spikes.noise(MadeRuns.series(0, 1, 50, t -> 3 * t))).isZero();
    assertThat(Spikes.noise(MadeRuns.series(0, 1, 3, t -> t % 2))).isZero();
  }

  /** One step in 49 second differences of ±1: √(2/49/6). */
  @Test
  void noiseOfASignalThatMostlyStandsIsItsRootMeanSquare() {
    Series step = MadeRuns.series(0, 1, 50, t -> t < 25 ? 0 : 1);
    assertThat(Spikes.noise(step)).isCloseTo(Math.sqrt(2 / 49.0 / 6), within(1e-9));
  }

  @Test
  void aRowFarFromItsNeighboursIsASpike() {
    Series spiked = MadeRuns.series(0, 1, 50, t -> t == 20 ? 8.1 : t == 30 ? 7.9 : 0);
    assertThat(Spikes.in(spiked, 1)).isEqualTo(List.of(20));
    assertThat(Spikes.in(spiked, 2)).isEmpty();
    assertThat(Spikes.in(MadeRuns.series(0, 1, 50, t -> 5 * t), 1)).isEmpty();
  }

  /** Sixteen rows in eight parts; parts at 1 and 3 in turn: variance 8/7, an eighth of it. */
  @Test
  void aZeroIsKnownByTheScatterOfItsParts() {
    Series parts = MadeRuns.series(0, 1, 15, t -> Math.floor(t / 2) % 2 == 0 ? 1 : 3);
    ZeroReading zero = ZeroReading.of("zero", parts, 0.5);
    assertThat(zero.signal()).isCloseTo(2, within(1e-12));
    assertThat(zero.u()).isCloseTo(Math.sqrt(1 / 7.0 + 0.25), within(1e-12));
    ZeroReading brief = ZeroReading.of("zero", parts.window(0, 2), 0.5);
    assertThat(brief.signal()).isCloseTo(5 / 3.0, within(1e-12));
    assertThat(brief.u()).isEqualTo(0.5);
  }

  @Test
  void aSpikeInAZeroDoesNotCount() {
    Series spiked = MadeRuns.series(0, 1, 79, t -> t == 40 ? 100 : 2);
    assertThat(ZeroReading.of("zero", spiked, 0.01).signal()).isCloseTo(2, within(0.01));
  }
}
