package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.physics.AirState;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An instrument that obeys the formula exactly: what is left is the estimator's own error. */
class SteadySpeedTest {
  private static final double[] HOLDS_M_S = {0.5, 0.1, 2, 0.3, 3, 0.2, 1};
  private static final double HOLD_S = 900;

  @ParameterizedTest(
      name = "rows every {0} s, noise {1} K: smoothed within {2}, filtered within {3}")
  @CsvSource({"0.05,0.01,0.01,0.02", "1,0.01,0.01,0.02", "10,0.03,0.03,0.05", "30,0.03,0.05,0.08"})
  void steadySpeedsComeBackAtAnyRowStep(
      double step_s, double noise, double smoothed, double filtered) {
    ModelInstrument instrument = new ModelInstrument(noise);
    double duration_s = HOLD_S * HOLDS_M_S.length;
    List<LogSample> log =
        instrument.settledLog(
            ModelInstrument.times(step_s, duration_s),
            ModelInstrument.Weather.of(SteadySpeedTest::hold),
            1);
    assertHolds(log, ModelInstrument.convert(smoothing(instrument), log), smoothed);
    assertHolds(log, ModelInstrument.convert(filtering(instrument), log), filtered);
  }

  private static void assertHolds(List<LogSample> log, List<SpeedRow> rows, double tolerance) {
    assertThat(rows).hasSameSizeAs(log);
    for (int hold = 0; hold < HOLDS_M_S.length; hold++) {
      double truth = HOLDS_M_S[hold];
      double mean = meanBetween(log, rows, (hold + 0.6) * HOLD_S, (hold + 0.95) * HOLD_S);
      assertThat(mean).as("hold at " + truth).isCloseTo(truth, within(tolerance * truth));
    }
  }

  @Test
  void theDirectionOfTheFlowMattersMoreForALargerBall() {
    // x = Gr/Re² = g Δ d / (T U²) and 6 % x / (1 + x) of U; by hand for U = 0.099 m/s:
    // Δ = 23.7 K, T = 305.0 K, d = 12.7 mm: x = 0.98, 2.97 %
    // Δ = 18.3 K, T = 302.3 K, d = 25.4 mm: x = 1.52, 3.62 %; with 12.7 mm it would be 2.59 %
    assertThat(directionShareAt(0.1, 0.0127)).isCloseTo(0.0297, within(0.0003));
    assertThat(directionShareAt(0.1, 0.0254)).isCloseTo(0.0362, within(0.0003));
  }

  /** What is left of the relative U95 when the formula is exact and the rows are quiet. */
  private static double directionShareAt(double speed_m_s, double ball_m) {
    ModelInstrument instrument = new ModelInstrument(1e-5, ball_m);
    Calibration c = instrument.calibration();
    FormulaFit f = c.formula();
    int size = f.parameters().size();
    FormulaFit exact =
        new FormulaFit(
            f.model(),
            f.equation(),
            f.parameters(),
            Covariance.of(new double[size][size]),
            f.referenceAir(),
            f.ball_m());
    Calibration known =
        new Calibration(
            c.origin(), c.signal(), exact, c.coverage(), c.evidence(), c.performance(), List.of());
    List<LogSample> log =
        instrument.settledLog(
            ModelInstrument.times(1, 1500), ModelInstrument.Weather.of(t -> speed_m_s), 3);
    SpeedEstimator estimator =
        SpeedEstimator.smoothing(known, new SpeedSettings(30, LogAir.UNKNOWN));
    SpeedRow row = ModelInstrument.convert(estimator, log).get(750);
    double whole = row.u95_m_s().orElseThrow() / row.speed_m_s().orElseThrow();
    double still = stillShareAt(row.speed_m_s().orElseThrow(), known);
    return Math.sqrt(whole * whole - still * still);
  }

  /** What the loss of still air may have changed by, 0.38 % of it, as a share of the speed. */
  private static double stillShareAt(double speed_m_s, Calibration known) {
    Formula formula = Formula.of(known);
    AirPoint air = AirPoint.of(known.formula().referenceAir());
    double delta_K = formula.steadyDelta_K(speed_m_s, known.signal().supply_V(), air);
    double[] loss = formula.lossAndSlopes(speed_m_s, delta_K, air);
    return 2 * 0.0038 * formula.loss_1_s(0, delta_K, air) / loss[1] / speed_m_s;
  }

  @ParameterizedTest(name = "{0} hPa, {1} °C")
  @CsvSource({"800,20", "1000,5", "1000,35", "700,0"})
  void speedComesBackInOtherAir(double pressure_hPa, double air_C) {
    AirState air = new AirState(air_C + 273.15, pressure_hPa * 100, 0.5);
    ModelInstrument instrument = new ModelInstrument(0.005);
    ModelInstrument.Weather weather =
        new ModelInstrument.Weather(t -> t < 1500 ? 0.2 : 1.5, t -> 5, air);
    List<LogSample> log = instrument.coldLog(ModelInstrument.times(1, 2800), weather, 2);
    List<SpeedRow> rows = ModelInstrument.convert(smoothing(instrument), log);
    assertThat(meanBetween(log, rows, 1000, 1400)).isCloseTo(0.2, within(0.004));
    assertThat(meanBetween(log, rows, 2000, 2700)).isCloseTo(1.5, within(0.02));
  }

  @Test
  void thinAirThatIsNotRecordedReadsLowByTheForcedPart() {
    AirState high = new AirState(293.15, 80_000, 0.5);
    ModelInstrument instrument = new ModelInstrument(0.005);
    ModelInstrument.Weather weather = new ModelInstrument.Weather(t -> 2, t -> 5, high);
    List<LogSample> log =
        instrument.settledLog(ModelInstrument.times(1, 1500), weather, 2).stream()
            .map(s -> new LogSample(s.time_s(), s.signal(), LogAir.UNKNOWN, s.supply_V()))
            .toList();
    double unknown =
        meanBetween(log, ModelInstrument.convert(smoothing(instrument), log), 300, 1200);
    SpeedSettings given =
        new SpeedSettings(
            30,
            new LogAir(OptionalDouble.empty(), OptionalDouble.of(80_000), OptionalDouble.empty()));
    SpeedEstimator corrected = SpeedEstimator.smoothing(instrument.calibration(), given);
    double known = meanBetween(log, ModelInstrument.convert(corrected, log), 300, 1200);
    // the forced part sees speed / kinematic viscosity, so speed reads as the density does
    assertThat(unknown / 2).isCloseTo(0.8, within(0.03));
    assertThat(known).isCloseTo(2, within(0.02));
  }

  @ParameterizedTest(name = "{0} m/s")
  @CsvSource({"0.1", "0.5", "2"})
  void aPressureThatNobodyRecordedWidensTheBandByWhatItDoes(double speed_m_s) {
    // the calibration's air has 1000 hPa; this one is a per cent thicker, and the log does not say
    // so
    AirState thick = new AirState(293.15, 101_000, 0.5);
    ModelInstrument instrument = new ModelInstrument(0.002);
    ModelInstrument.Weather weather = new ModelInstrument.Weather(t -> speed_m_s, t -> 5, thick);
    List<LogSample> log = instrument.settledLog(ModelInstrument.times(1, 1500), weather, 2);
    SpeedRow told = ModelInstrument.convert(smoothing(instrument), log).get(750);
    List<LogSample> silent =
        log.stream()
            .map(
                s -> {
                  LogAir air =
                      new LogAir(
                          s.air().temperature_K(),
                          OptionalDouble.empty(),
                          s.air().relativeHumidity());
                  return new LogSample(s.time_s(), s.signal(), air, s.supply_V());
                })
            .toList();
    SpeedRow untold = ModelInstrument.convert(smoothing(instrument), silent).get(750);
    double moved = untold.speed_m_s().orElseThrow() - told.speed_m_s().orElseThrow();
    double wider =
        Math.sqrt(
            Math.pow(untold.u95_m_s().orElseThrow(), 2)
                - Math.pow(told.u95_m_s().orElseThrow(), 2));
    assertThat(moved).isPositive();
    assertThat(wider).isCloseTo(2 * moved, within(0.1 * wider));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void unevenStepsDoNotMatter(long seed) {
    java.util.Random random = new java.util.Random(seed);
    double[] times = new double[1500];
    for (int i = 1; i < times.length; i++) {
      times[i] = times[i - 1] + 1 + 2 * random.nextDouble();
    }
    ModelInstrument instrument = new ModelInstrument(0.01);
    List<LogSample> log =
        instrument.settledLog(times, ModelInstrument.Weather.of(t -> t < 1500 ? 0.3 : 1), seed);
    List<SpeedRow> rows = ModelInstrument.convert(smoothing(instrument), log);
    assertThat(meanBetween(log, rows, 600, 1400)).isCloseTo(0.3, within(0.004));
    assertThat(meanBetween(log, rows, 1800, 2800)).isCloseTo(1, within(0.012));
    assertThat(rows).noneMatch(r -> r.flags().contains(SpeedFlag.GAP));
  }

  @Test
  void lowerSupplyIsCorrectedByItsPower() {
    ModelInstrument instrument = new ModelInstrument(0.005);
    ModelInstrument.Weather sagged =
        new ModelInstrument.Weather(t -> 0.5, t -> 4.85, ModelInstrument.AIR);
    List<LogSample> log = instrument.coldLog(ModelInstrument.times(1, 2500), sagged, 3);
    List<SpeedRow> rows = ModelInstrument.convert(smoothing(instrument), log);
    assertThat(meanBetween(log, rows, 1500, 2400)).isCloseTo(0.5, within(0.005));
    assertThat(rows.get(2000).flags()).isEmpty();
  }

  static SpeedEstimator smoothing(ModelInstrument instrument) {
    return SpeedEstimator.smoothing(
        instrument.calibration(), new SpeedSettings(30, LogAir.UNKNOWN));
  }

  static SpeedEstimator filtering(ModelInstrument instrument) {
    return SpeedEstimator.filtering(
        instrument.calibration(), new SpeedSettings(30, LogAir.UNKNOWN));
  }

  static double meanBetween(List<LogSample> log, List<SpeedRow> rows, double from_s, double to_s) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < rows.size(); i++) {
      double time_s = log.get(i).time_s().orElseThrow();
      if (time_s >= from_s && time_s <= to_s) {
        sum += rows.get(i).speed_m_s().orElseThrow();
        count++;
      }
    }
    return sum / count;
  }

  private static double hold(double time_s) {
    return HOLDS_M_S[(int) Math.min(HOLDS_M_S.length - 1, time_s / HOLD_S)];
  }
}
