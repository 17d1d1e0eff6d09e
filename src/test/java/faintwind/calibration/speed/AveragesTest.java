package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What averages leave of the error in gusts, and the means of whole minutes. */
class AveragesTest {
  private static final double QUIET_K = 0.005;
  private static final double COARSE_K = 0.1;
  private static final int LENGTH_S = 7200;

  /** Gusts of a third, forgotten in 12 s, on a wind that changes by a third in some minutes. */
  private static double[] gusts(long seed) {
    Random random = new Random(seed);
    double[] speed_m_s = new double[LENGTH_S + 1];
    double quick = 0;
    double slow = 0;
    for (int i = 0; i < speed_m_s.length; i++) {
      quick = forget(quick, 12, 0.3, random);
      slow = forget(slow, 240, 0.4, random);
      speed_m_s[i] = 0.6 * Math.exp(quick + slow);
    }
    return speed_m_s;
  }

  private static double forget(double last, double time_s, double spread, Random random) {
    double kept = Math.exp(-1 / time_s);
    return kept * last + spread * Math.sqrt(1 - kept * kept) * random.nextGaussian();
  }

  private static List<LogSample> log(ModelInstrument instrument, double[] speed_m_s) {
    ModelInstrument.Weather weather =
        ModelInstrument.Weather.of(t -> speed_m_s[(int) Math.max(0, Math.min(LENGTH_S, t))]);
    return instrument.settledLog(ModelInstrument.times(1, LENGTH_S), weather, 3);
  }

  /** Truth at a row is the mean of the second before and the second after. */
  private static double mean(double[] speed_m_s, int from, int to) {
    double sum = 0;
    for (int i = from; i <= to; i++) {
      sum += 0.5 * (speed_m_s[i - 1] + speed_m_s[i]);
    }
    return sum / (to - from + 1);
  }

  @ParameterizedTest(name = "noise {0} K, averaged over {1} s")
  @CsvSource({"0.005,0", "0.005,6", "0.005,10", "0.005,30", "0.1,0", "0.1,6", "0.1,10", "0.1,30"})
  void bandOfAnAverageHoldsInGusts(double noise_K, double average_s) {
    ModelInstrument instrument = new ModelInstrument(noise_K);
    int half = (int) Math.round(average_s / 2);
    int all = 0;
    int within = 0;
    double off2 = 0;
    double band2 = 0;
    for (long seed = 1; seed <= 2; seed++) {
      double[] speed_m_s = gusts(seed);
      SpeedSettings settings = new SpeedSettings(average_s, LogAir.UNKNOWN);
      List<SpeedRow> rows =
          ModelInstrument.convert(
              SpeedEstimator.smoothing(instrument.calibration(), settings),
              log(instrument, speed_m_s));
      for (int i = 300; i < LENGTH_S - 300; i++) {
        double truth_m_s = mean(speed_m_s, i - half, i + half);
        SpeedRow row = rows.get(i);
        double off_m_s = Math.abs(row.speed_m_s().orElseThrow() - truth_m_s);
        double u95_m_s = row.u95_m_s().orElseThrow();
        all++;
        within += off_m_s <= u95_m_s ? 1 : 0;
        off2 += off_m_s * off_m_s;
        band2 += u95_m_s * u95_m_s;
      }
    }
    assertThat((double) within / all).isGreaterThan(0.92);
    // a band that always held would be no use; over long averages the formula's own share is left
    double deviations = Math.sqrt(band2 / off2);
    assertThat(deviations).isGreaterThan(1.7);
    if (average_s <= 6) {
      assertThat(deviations).isLessThan(4);
    }
  }

  @Test
  void minuteIsTheMeanOfItsRowsWithoutAveraging() {
    ModelInstrument instrument = new ModelInstrument(QUIET_K);
    List<LogSample> log = log(instrument, gusts(1));
    List<MinuteSpeed> minutes = new ArrayList<>();
    SpeedSettings none = new SpeedSettings(0, LogAir.UNKNOWN);
    SpeedSettings half = new SpeedSettings(30, LogAir.UNKNOWN);
    List<SpeedRow> rows =
        ModelInstrument.convert(SpeedEstimator.smoothing(instrument.calibration(), none), log);
    ModelInstrument.convert(
        SpeedEstimator.smoothing(instrument.calibration(), half, minutes::add), log);
    assertThat(minutes).hasSize(LENGTH_S / 60 + 1);
    for (int i = 10; i < 100; i++) {
      MinuteSpeed minute = minutes.get(i);
      assertThat(minute.from_s()).isEqualTo(60.0 * i);
      assertThat(minute.rows()).isEqualTo(60);
      double mean =
          rows.subList(60 * i, 60 * i + 60).stream()
              .mapToDouble(r -> r.speed_m_s().orElseThrow())
              .average()
              .orElseThrow();
      assertThat(minute.speed().speed_m_s().orElseThrow()).isCloseTo(mean, within(1e-9));
    }
  }

  @ParameterizedTest(name = "noise {0} K")
  @CsvSource({"0.005", "0.1"})
  void bandOfAMinuteHoldsInGusts(double noise_K) {
    ModelInstrument instrument = new ModelInstrument(noise_K);
    int within = 0;
    int all = 0;
    for (long seed = 1; seed <= 3; seed++) {
      double[] speed_m_s = gusts(seed);
      List<MinuteSpeed> minutes = new ArrayList<>();
      SpeedSettings settings = new SpeedSettings(30, LogAir.UNKNOWN);
      ModelInstrument.convert(
          SpeedEstimator.smoothing(instrument.calibration(), settings, minutes::add),
          log(instrument, speed_m_s));
      for (int i = 5; i < 115; i++) {
        double truth_m_s = mean(speed_m_s, 60 * i, 60 * i + 59);
        SpeedRow minute = minutes.get(i).speed();
        double off_m_s = Math.abs(minute.speed_m_s().orElseThrow() - truth_m_s);
        all++;
        within += off_m_s <= minute.u95_m_s().orElseThrow() ? 1 : 0;
      }
    }
    assertThat((double) within / all).isGreaterThan(0.93);
  }

  @Test
  void noisierInstrumentAveragesLonger() {
    double quiet_s = UsualAverage.of(new ModelInstrument(QUIET_K).calibration());
    double coarse_s = UsualAverage.of(new ModelInstrument(COARSE_K).calibration());
    assertThat(quiet_s).isLessThanOrEqualTo(10);
    assertThat(coarse_s).isBetween(20.0, 60.0);
    assertThat(UsualAverage.noise(new ModelInstrument(COARSE_K).calibration(), coarse_s))
        .isLessThanOrEqualTo(UsualAverage.NOISE);
  }
}
