package faintwind.calibration.run;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What one run file holds, in SI where the quantity is known and in the file's own unit for the
 * signal.
 *
 * @param unit unit of the signal
 * @param signal the signal against time
 * @param air_K air temperature, K
 * @param pressure_Pa air pressure, Pa
 * @param relativeHumidity relative humidity, 0 to 1
 * @param supply_V heater supply, V
 * @param start when time 0 was
 */
public record Recording(
    SignalUnit unit,
    Series signal,
    Optional<Series> air_K,
    Optional<Series> pressure_Pa,
    Optional<Series> relativeHumidity,
    Optional<Series> supply_V,
    Optional<OffsetDateTime> start) {

  /** A signal alone: nothing else was recorded. */
  public static Recording of(SignalUnit unit, Series signal) {
    return new Recording(
        unit,
        signal,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The part between two times of the file's clock; an optional channel that has nothing there
   * falls away.
   */
  public Recording window(double from_s, double to_s) {
    return new Recording(
        unit,
        signal.window(from_s, to_s),
        part(air_K, from_s, to_s),
        part(pressure_Pa, from_s, to_s),
        part(relativeHumidity, from_s, to_s),
        part(supply_V, from_s, to_s),
        start);
  }

  /** The same without what the signal cannot have been. */
  public Recording within(Possible possible) {
    int[] kept =
        IntStream.range(0, signal.size())
            .filter(i -> possible.allowsSignal(signal.value(i)))
            .toArray();
    return kept.length == signal.size()
        ? this
        : with(
            Series.of(
                IntStream.of(kept).mapToDouble(signal::time_s).toArray(),
                IntStream.of(kept).mapToDouble(signal::value).toArray()));
  }

  /** The same with another signal. */
  Recording with(Series other) {
    return new Recording(unit, other, air_K, pressure_Pa, relativeHumidity, supply_V, start);
  }

  private static Optional<Series> part(Optional<Series> series, double from_s, double to_s) {
    return series.map(s -> s.window(from_s, to_s)).filter(s -> !s.isEmpty());
  }
}
