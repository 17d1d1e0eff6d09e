package faintwind.calibration.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Amount;
import faintwind.record.ReadingVerdict;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Rise and drop on the bench of made-up builds with all their lags, judged by the bands of the
 * shipped steps: a correct build passes, half its gain does not.
 */
class BenchReadingsTest {
  private static final double SENSITIVITY_UV_K = 40;

  private static VirtualBuild inKelvin(long seed) {
    VirtualBuild build = VirtualDraw.build(seed).noiseless();
    return build.readBy(
        new VirtualChain(
            SignalUnit.DELTA_K,
            VirtualChain.Wire.K,
            1,
            0,
            build.chain().reading(),
            build.chain().bead_s()));
  }

  private static double still_K(VirtualBuild build) {
    VirtualInstrument warm = new VirtualInstrument(build, 1);
    warm.stage(VirtualStage.rest(1, Heater.ON));
    warm.settle();
    return warm.sampleAt(0).signal();
  }

  private static Map<String, Double> sheet(VirtualBuild build) {
    double rate_K_s = build.heater().power_W(0) / build.heated().capacity_J_K();
    return Map.of(
        "warm_up_rate_K_s", rate_K_s,
        "still_delta_K", still_K(build),
        "sensitivity_uV_K", SENSITIVITY_UV_K);
  }

  private static ReadingVerdict judged(String id, double kelvin, Map<String, Double> sheet) {
    Reading reading =
        ShippedChecklist.standard().stepOfReading(id).orElseThrow().reading(id).orElseThrow();
    Amount amount = Amount.exact(kelvin * SENSITIVITY_UV_K / 1000, reading.unit());
    return reading.judge(amount, sheet).orElseThrow().verdict();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void aCorrectRiseIsGoodAndHalfTheGainIsNot(long seed) {
    VirtualBuild build = inKelvin(seed);
    VirtualInstrument cold = new VirtualInstrument(build, seed);
    cold.stage(VirtualStage.rest(120, Heater.ON));
    double rise_K = cold.sampleAt(120).signal();
    Map<String, Double> sheet = sheet(build);
    assertThat(judged("sense-change", rise_K, sheet)).isEqualTo(ReadingVerdict.GOOD);
    assertThat(judged("sense-change", rise_K / 2, sheet)).isNotEqualTo(ReadingVerdict.GOOD);
    assertThat(judged("sense-change", rise_K * 2, sheet)).isNotEqualTo(ReadingVerdict.GOOD);
    assertThat(judged("sense-change", -rise_K, sheet)).isEqualTo(ReadingVerdict.STOP);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void aMinuteOfSlowAirShowsAndTenSecondsOfItDoNot(long seed) {
    VirtualBuild build = inKelvin(seed);
    double still_K = still_K(build);
    Map<String, Double> sheet = sheet(build);
    for (double speed_m_s : new double[] {0.3, 1}) {
      double drop_K = still_K - fanned_K(build, speed_m_s, 60);
      assertThat(judged("breath-drop", drop_K, sheet)).isEqualTo(ReadingVerdict.GOOD);
    }
    double quick_K = still_K - fanned_K(build, 0.3, 10);
    assertThat(quick_K / still_K).isCloseTo(0, within(0.02));
    assertThat(judged("breath-drop", quick_K, sheet)).isNotEqualTo(ReadingVerdict.GOOD);
    assertThat(judged("breath-drop", 0, sheet)).isEqualTo(ReadingVerdict.STOP);
  }

  private static double fanned_K(VirtualBuild build, double speed_m_s, double time_s) {
    VirtualInstrument warm = new VirtualInstrument(build, 1);
    warm.stage(VirtualStage.rest(1, Heater.ON));
    warm.settle();
    warm.blow(speed_m_s, Heater.ON);
    return warm.sampleAt(time_s).signal();
  }
}
