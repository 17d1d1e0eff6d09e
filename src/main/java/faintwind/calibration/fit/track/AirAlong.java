package faintwind.calibration.fit.track;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.Series;
import faintwind.physics.AirState;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Air along a file: temperature smoothed from the rows where they have it, otherwise from the runs
 * table; pressure and humidity as means.
 */
public final class AirAlong {
  private static final double SMOOTH_S = 150;

  private final Series temperature_K;
  private final AirPoint base;

  private AirAlong(Series temperature_K, AirPoint base) {
    this.temperature_K = temperature_K;
    this.base = base;
  }

  public static AirAlong of(FileRows file, AirState otherwise) {
    Series temperature =
        file.channel(r -> r.recording().air_K())
            .orElseGet(() -> fromTable(file, otherwise.temperature_K()));
    double pressure =
        mean(file, Recording::pressure_Pa, RunConditions::pressure_Pa, otherwise.pressure_Pa());
    double humidity =
        mean(
            file,
            Recording::relativeHumidity,
            RunConditions::relativeHumidity,
            otherwise.relativeHumidity());
    return new AirAlong(
        temperature, AirPoint.of(new AirState(temperature.mean(), pressure, humidity)));
  }

  private static double mean(
      FileRows file,
      Function<Recording, Optional<Series>> rows,
      Function<RunConditions, OptionalDouble> table,
      double otherwise) {
    Optional<Series> channel = file.channel(r -> rows.apply(r.recording()));
    if (channel.isPresent()) {
      return channel.get().mean();
    }
    return file.runs().stream()
        .map(r -> table.apply(r.conditions()))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .average()
        .orElse(otherwise);
  }

  private static Series fromTable(FileRows file, double otherwise_K) {
    double[] times = new double[file.runs().size()];
    double[] values = new double[times.length];
    int n = 0;
    for (Run run : file.runs()) {
      Series signal = run.recording().signal();
      double middle = 0.5 * (signal.first_s() + signal.last_s());
      if (run.conditions().air_K().isPresent() && (n == 0 || middle > times[n - 1])) {
        times[n] = middle;
        values[n++] = run.conditions().air_K().getAsDouble();
      }
    }
    return n == 0
        ? Series.of(new double[] {file.signal().first_s()}, new double[] {otherwise_K})
        : Series.of(Arrays.copyOf(times, n), Arrays.copyOf(values, n));
  }

  /** The air at a time. */
  AirPoint at(double t_s) {
    return base.withTemperature(temperature(t_s, SMOOTH_S));
  }

  /** Mean temperature between two times, K, from the rows as they are. */
  double mean_K(double from_s, double to_s) {
    return LineMean.of(temperature_K, from_s, to_s, 0, 1);
  }

  private double temperature(double t_s, double reach_s) {
    int from = temperature_K.indexAtOrAfter(t_s - reach_s);
    int to = temperature_K.indexAtOrAfter(t_s + reach_s);
    if (to - from < 8) {
      return temperature_K.at(t_s);
    }
    double sum = 0;
    int count = 0;
    int stride = Math.max(1, (to - from) / 100);
    for (int i = from; i < to; i += stride) {
      sum += temperature_K.value(i);
      count++;
    }
    return sum / count;
  }
}
