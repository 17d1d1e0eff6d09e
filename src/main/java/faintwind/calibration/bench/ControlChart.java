package faintwind.calibration.bench;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A control chart of single values in the order they were taken: the limits are the mean ± 2.66
 * times the mean difference of neighbours (Shewhart; ISO 7870-2, from memory: 2.66 = 3/1.128).
 *
 * @param values in the order they were taken
 * @param mean of all but the last
 * @param reach from the mean to a limit
 */
public record ControlChart(List<Double> values, double mean, double reach) {
  /** Fewer values give no limits worth the name (own choice). */
  public static final int LEAST = 5;

  private static final double LIMIT = 2.66;

  public ControlChart {
    values = List.copyOf(values);
  }

  /**
   * The chart; the last value is judged by those before it.
   *
   * @throws IllegalArgumentException where there are too few values
   */
  public static ControlChart of(List<Double> values) {
    if (values.size() < LEAST) {
      throw new IllegalArgumentException("values = " + values.size() + ", at least " + LEAST);
    }
    List<Double> before = values.subList(0, values.size() - 1);
    double mean = before.stream().mapToDouble(v -> v).average().orElseThrow();
    double moving =
        IntStream.range(1, before.size())
            .mapToDouble(i -> Math.abs(before.get(i) - before.get(i - 1)))
            .average()
            .orElseThrow();
    return new ControlChart(values, mean, LIMIT * moving);
  }

  public double low() {
    return mean - reach;
  }

  public double high() {
    return mean + reach;
  }

  /** The first value outside the limits, from 0; empty where all are inside. */
  public OptionalInt outside() {
    return IntStream.range(0, values.size())
        .filter(i -> values.get(i) < low() || values.get(i) > high())
        .findFirst();
  }
}
