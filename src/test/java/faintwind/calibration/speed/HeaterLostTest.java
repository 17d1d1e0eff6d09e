package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The heater is lost at 2000 s and comes back at 5000 s, in still air, a breeze and a wind. */
class HeaterLostTest {
  private static final int LOST = 2000;
  private static final int BACK = 5000;
  private static final int END = 8000;

  static Stream<Arguments> cases() {
    return Stream.of(0.0, 0.3, 2.0)
        .flatMap(speed -> Stream.of(1.0, 10.0).map(step_s -> Arguments.of(speed, step_s)));
  }

  @ParameterizedTest(name = "{0} m/s, rows every {1} s")
  @MethodSource("cases")
  void showsAtOnceWhereTheSupplyIsRecorded(double speed_m_s, double step_s) {
    for (Function<ModelInstrument, SpeedEstimator> way : SpeedFlagsTest.bothWays().toList()) {
      ModelInstrument instrument = new ModelInstrument(0.02);
      List<LogSample> log = log(instrument, speed_m_s, step_s);
      List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
      assertPower(rows, step_s, LOST + step_s, BACK - step_s);
      assertRecovers(rows, step_s, speed_m_s, BACK + 900);
    }
  }

  @ParameterizedTest(name = "{0} m/s, rows every {1} s")
  @MethodSource("cases")
  void showsInTheHeatBalanceWhereItIsNot(double speed_m_s, double step_s) {
    ModelInstrument instrument = new ModelInstrument(0.02);
    List<LogSample> log = ModelInstrument.withoutSupply(log(instrument, speed_m_s, step_s));
    List<SpeedRow> rows = ModelInstrument.convert(SteadySpeedTest.smoothing(instrument), log);
    assertPower(rows, step_s, LOST + 60, BACK - 10);
    assertRecovers(rows, step_s, speed_m_s, BACK + 900);
  }

  @ParameterizedTest(name = "{0} m/s, rows every {1} s")
  @MethodSource("cases")
  void showsWithinMinutesInAStreamWithoutSupply(double speed_m_s, double step_s) {
    ModelInstrument instrument = new ModelInstrument(0.02);
    List<LogSample> log = ModelInstrument.withoutSupply(log(instrument, speed_m_s, step_s));
    List<SpeedRow> rows = ModelInstrument.convert(SteadySpeedTest.filtering(instrument), log);
    assertPower(rows, step_s, LOST + (step_s > 5 ? 400 : 250), BACK - 10);
    assertRecovers(rows, step_s, speed_m_s, BACK + 900);
  }

  private static List<LogSample> log(ModelInstrument instrument, double speed_m_s, double step_s) {
    ModelInstrument.Weather weather =
        new ModelInstrument.Weather(
            t -> speed_m_s, t -> t >= LOST && t < BACK ? 0.001 : 5, ModelInstrument.AIR);
    return instrument.settledLog(ModelInstrument.times(step_s, END), weather, 9);
  }

  private static void assertPower(List<SpeedRow> rows, double step_s, double from_s, double to_s) {
    for (int i = (int) (from_s / step_s); i <= to_s / step_s; i++) {
      assertThat(rows.get(i).flags()).as("at " + i * step_s + " s").contains(SpeedFlag.POWER);
    }
    for (int i = (int) (200 / step_s); i < (LOST - 60) / step_s; i++) {
      assertThat(rows.get(i).flags()).as("at " + i * step_s + " s").doesNotContain(SpeedFlag.POWER);
    }
  }

  private static void assertRecovers(
      List<SpeedRow> rows, double step_s, double speed_m_s, double from_s) {
    for (int i = (int) (from_s / step_s); i < (END - 60) / step_s; i++) {
      assertThat(rows.get(i).flags())
          .as("at " + i * step_s + " s")
          .doesNotContain(SpeedFlag.POWER, SpeedFlag.WARMUP);
      assertThat(rows.get(i).speed_m_s().orElseThrow())
          .as("at " + i * step_s + " s")
          .isBetween(0.8 * speed_m_s - 0.06, 1.2 * speed_m_s + 0.06);
    }
  }
}
