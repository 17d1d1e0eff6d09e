package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.speed.state.StateSettings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SignalMatchTest {
  private static SignalPath path(SignalUnit unit, OptionalDouble gain) {
    SignalChain chain =
        new SignalChain(
            SignalChain.Input.VOLTAGE,
            Optional.of("K"),
            gain,
            OptionalDouble.of(50),
            -1,
            SignalChain.AS_IS.resolution());
    return new SignalPath(unit, chain, Optional.of("K"), 4, OptionalDouble.empty());
  }

  private static SignalMatch match(SignalUnit logged, SignalUnit calibrated) {
    return SignalMatch.of(logged, path(calibrated, OptionalDouble.of(100))).orElseThrow();
  }

  @Test
  void theSameUnitNeedsNothing() {
    assertThat(match(SignalUnit.SIGNAL_MV, SignalUnit.SIGNAL_MV).isSame()).isTrue();
    assertThat(match(SignalUnit.SIGNAL_MV, SignalUnit.SIGNAL_MV).apply(7)).isEqualTo(7);
    assertThat(new SignalMatch(1, 2).isSame()).isFalse();
    assertThat(new SignalMatch(2, 0).isSame()).isFalse();
  }

  @Test
  void voltsDifferByPowersOfTen() {
    assertThat(match(SignalUnit.SIGNAL_V, SignalUnit.SIGNAL_MV).apply(0.5))
        .isCloseTo(500, within(1e-9));
    assertThat(match(SignalUnit.SIGNAL_UV, SignalUnit.SIGNAL_MV).apply(500))
        .isCloseTo(0.5, within(1e-9));
  }

  /** 10 K at 40.4 µV/K (type K at 20 °C, from memory), times −100, and 50 mV of offset: 9.6 mV. */
  @Test
  void kelvinGoThroughTheChain() {
    SignalMatch forth = match(SignalUnit.DELTA_K, SignalUnit.SIGNAL_MV);
    assertThat(forth.apply(10)).isCloseTo(50 - 40.4, within(0.2));
    SignalMatch back = match(SignalUnit.SIGNAL_MV, SignalUnit.DELTA_K);
    double volts_K = -100 * 40.35e-6;
    assertThat(back.scale()).isCloseTo(1e-3 / volts_K, within(0.002));
    assertThat(back.shift()).isCloseTo(-50 * 1e-3 / volts_K, within(0.1));
  }

  @Test
  void withoutTheChainThereIsNoMatch() {
    assertThat(
            SignalMatch.of(SignalUnit.DELTA_K, path(SignalUnit.SIGNAL_MV, OptionalDouble.empty())))
        .isEmpty();
    assertThat(
            SignalMatch.of(
                SignalUnit.SIGNAL_COUNTS, path(SignalUnit.SIGNAL_MV, OptionalDouble.of(100))))
        .isEmpty();
  }

  /** Another program reads them from the file by these names (docs/formats). */
  @Test
  void everySettingOfTheLiveFilterIsListed() {
    Map<String, Double> all = LiveSettings.all();
    assertThat(all)
        .containsEntry("first_walk", 2.0)
        .containsEntry("score_memory_s", 900.0)
        .containsEntry("drift_keep", 0.7)
        .containsEntry("usual_rows", 100.0)
        .containsKeys(
            "switch_margin",
            "score_clip",
            "gap_steps",
            "spikes_in_a_row",
            "warm_share",
            "still_away",
            "air_smoothing_s",
            "supply_tolerance")
        .containsKeys(StateSettings.all().keySet().toArray(String[]::new));
    assertThat(StateSettings.all()).isNotEmpty();
    assertThat(LiveSettings.walks_1_sqrt_s()).hasSize(6).startsWith(1e-3).endsWith(5e-2);
    assertThat(LiveSettings.uncertainty(0.02))
        .containsEntry("coverage_factor", 2.0)
        .containsEntry("still_draught_m_s", 0.02)
        .containsEntry("u_still", 0.0038)
        .hasSize(10);
  }

  /**
   * With a hundredth of the noise the shortest time is enough, with a hundred times the longest.
   */
  @Test
  void theUsualAverageGrowsWithTheNoise() {
    Calibration calibration = TestCalibration.ofModel();
    assertThat(UsualAverage.of(new ModelInstrument(0.0002).calibration())).isEqualTo(5);
    assertThat(UsualAverage.of(new ModelInstrument(2).calibration())).isEqualTo(120);
    double ten = UsualAverage.noise(calibration, 10);
    assertThat(UsualAverage.noise(calibration, 40)).isCloseTo(ten / 8, within(1e-9));
    assertThat(UsualAverage.noise(new ModelInstrument(0.04).calibration(), 10))
        .isCloseTo(2 * ten, within(1e-9));
    assertThat(UsualAverage.noise(calibration, 2))
        .as("all rows of the time count for either end")
        .isCloseTo(UsualAverage.noise(calibration, 1) / 2, within(1e-9));
    double chosen = UsualAverage.of(calibration);
    assertThat(UsualAverage.noise(calibration, chosen)).isLessThanOrEqualTo(UsualAverage.NOISE);
    for (double shorter : List.of(5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 60.0)) {
      if (shorter < chosen) {
        assertThat(UsualAverage.noise(calibration, shorter)).isGreaterThan(UsualAverage.NOISE);
      }
    }
  }
}
