package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.Evidence;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * An instrument that obeys the formula exactly, and its calibration with the true parameters: what
 * is left as error is the estimator's own.
 */
public final class ModelInstrument {
  static final AirState AIR = new AirState(293.15, 100_000, 0.5);
  private static final double[] LOSS = {6.6e-4, 1.0, 1.0, 4e-4, 6e-5, 0.0, 3.0, 1.1};
  private static final double[] PATH = {0.066, 0.03, 15, 2.5, 0.1, 0.0, 0.0009};
  private static final double STEP_S = 0.05;

  private final double noise;
  private final double ball_m;
  private final ResponseModel model;
  private final ThermalPath path = ThermalPath.of(PATH, 1, AIR.temperature_K(), 0);

  public ModelInstrument(double noise) {
    this(noise, 0.0127);
  }

  ModelInstrument(double noise, double ball_m) {
    this.noise = noise;
    this.ball_m = ball_m;
    this.model = new PhysicsShaped(AIR, ball_m);
  }

  public Calibration calibration() {
    List<ParameterPrior> quantities = new ArrayList<>(model.quantities());
    quantities.addAll(ThermalPath.quantities("K"));
    List<Parameter> parameters = new ArrayList<>();
    double[][] covariance = new double[LOSS.length + PATH.length][LOSS.length + PATH.length];
    for (int i = 0; i < quantities.size(); i++) {
      double value = i < LOSS.length ? LOSS[i] : PATH[i - LOSS.length];
      double u = quantities.get(i).name().equals("forced") ? 0.01 : 0;
      covariance[i][i] = u * u;
      parameters.add(new Parameter(quantities.get(i).name(), value, u, quantities.get(i).unit()));
    }
    return new Calibration(
        new Origin("made up", OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of()),
        new SignalPath(
            SignalUnit.DELTA_K, SignalChain.AS_IS, Optional.of("K"), 1, OptionalDouble.of(5)),
        new FormulaFit(
            model.id(),
            "as in the test",
            parameters,
            Covariance.of(covariance),
            AIR,
            OptionalDouble.of(ball_m)),
        new Coverage(0.1, 3, 5, 32, true, Optional.empty()),
        new Evidence(
            new Evidence.ResidualStatistics(noise, noise, 0, 1, 1000, 1000),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty()),
        new Performance(0.03, stillDelta_K(), noise, 1, 0, List.of()),
        List.of());
  }

  double stillDelta_K() {
    double low = 0;
    double high = 100;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (loss(0, middle, AirPoint.of(AIR)) * middle < PATH[0]) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double loss(double speed_m_s, double delta_K, AirPoint air) {
    double[] out = new double[3 + LOSS.length];
    model.loss(LOSS, speed_m_s, delta_K, air, out);
    return out[0];
  }

  /** What happens to the instrument. */
  record Weather(DoubleUnaryOperator speed_m_s, DoubleUnaryOperator supply_V, AirState air) {
    static Weather of(DoubleUnaryOperator speed_m_s) {
      return new Weather(speed_m_s, t -> 5, AIR);
    }
  }

  /** Samples at the given times, from a state settled at the first one's speed. */
  List<LogSample> settledLog(double[] times_s, Weather weather, long seed) {
    AirPoint air = AirPoint.of(weather.air());
    double delta = 10;
    for (int i = 0; i < 200; i++) {
      delta = PATH[0] / loss(weather.speed_m_s().applyAsDouble(times_s[0]), delta, air);
    }
    return log(times_s, weather, new double[] {delta, PATH[0], delta}, seed);
  }

  /** Samples at the given times, the heater switched on at the first. */
  List<LogSample> coldLog(double[] times_s, Weather weather, long seed) {
    return log(times_s, weather, new double[3], seed);
  }

  private List<LogSample> log(double[] times_s, Weather weather, double[] state, long seed) {
    RandomGenerator random = new Well19937c(seed);
    AirPoint air = AirPoint.of(weather.air());
    List<LogSample> samples = new ArrayList<>();
    double now_s = times_s[0];
    for (double time_s : times_s) {
      while (now_s < time_s - 1e-9) {
        double step_s = Math.min(STEP_S, time_s - now_s);
        advance(state, step_s, now_s, weather, air);
        now_s += step_s;
      }
      double signal =
          path.offset()
              + path.curve().signal(state[2], air.air_K())
              + noise * random.nextGaussian();
      samples.add(sample(time_s, signal, weather));
    }
    return samples;
  }

  private static LogSample sample(double time_s, double signal, Weather weather) {
    LogAir air =
        new LogAir(
            OptionalDouble.of(weather.air().temperature_K()),
            OptionalDouble.of(weather.air().pressure_Pa()),
            OptionalDouble.of(weather.air().relativeHumidity()));
    return new LogSample(
        OptionalDouble.of(time_s),
        OptionalDouble.of(signal),
        air,
        OptionalDouble.of(weather.supply_V().applyAsDouble(time_s)));
  }

  /** Heun's rule. */
  private void advance(double[] state, double step_s, double now_s, Weather weather, AirPoint air) {
    double[] first = slopes(state, now_s, weather, air);
    double[] ahead = new double[3];
    for (int i = 0; i < 3; i++) {
      ahead[i] = state[i] + step_s * first[i];
    }
    double[] second = slopes(ahead, now_s + step_s, weather, air);
    for (int i = 0; i < 3; i++) {
      state[i] += step_s / 2 * (first[i] + second[i]);
    }
  }

  private double[] slopes(double[] state, double now_s, Weather weather, AirPoint air) {
    double volts = weather.supply_V().applyAsDouble(now_s);
    double p = PATH[0] * volts * volts / 25;
    double loss = loss(weather.speed_m_s().applyAsDouble(now_s), state[0], air);
    double ball = (state[1] - loss * state[0]) / (1 - path.heaterShare());
    return new double[] {
      ball,
      (p - state[1]) / path.heaterTime_s() - path.heaterShare() / path.heaterTime_s() * ball,
      (state[0] - state[2]) / path.beadTime_s()
    };
  }

  /** Times from 0 in equal steps. */
  static double[] times(double step_s, double duration_s) {
    int count = (int) Math.round(duration_s / step_s) + 1;
    double[] times = new double[count];
    Arrays.setAll(times, i -> i * step_s);
    return times;
  }

  /** The same rows without their supply. */
  static List<LogSample> withoutSupply(List<LogSample> samples) {
    return samples.stream()
        .map(s -> new LogSample(s.time_s(), s.signal(), s.air(), OptionalDouble.empty()))
        .toList();
  }

  static List<SpeedRow> convert(SpeedEstimator estimator, List<LogSample> samples) {
    List<SpeedRow> rows = new ArrayList<>();
    for (LogSample sample : samples) {
      estimator.accept(sample, rows::add);
    }
    estimator.finish(rows::add);
    return rows;
  }
}
