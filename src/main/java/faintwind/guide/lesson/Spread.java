package faintwind.guide.lesson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * One quantity over the instruments of a class: median, robust standard deviation, and who lies
 * outside. An instrument is outside where it is more than 3.5 robust standard deviations from the
 * median (the modified z-score after Iglewicz and Hoaglin, 1993, from memory); the deviation is
 * 1.4826 times the median absolute deviation, and at least half a per cent of the median, so that a
 * class that agrees perfectly does not accuse the next one. Under four values nobody is outside.
 *
 * @param median of all
 * @param deviation robust standard deviation
 * @param values by the pair's number
 */
public record Spread(double median, double deviation, Map<Integer, Double> values) {
  private static final double NORMAL = 1.4826;
  private static final double OUTSIDE = 3.5;
  private static final double LEAST_SHARE = 0.005;
  private static final int FEWEST = 4;

  public Spread {
    values = Map.copyOf(values);
  }

  /** The spread of values by the pair's number; empty where there is none. */
  public static Optional<Spread> of(Map<Integer, Double> values) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    double median = new Median().evaluate(values.values().stream().mapToDouble(v -> v).toArray());
    double apart =
        new Median()
            .evaluate(values.values().stream().mapToDouble(v -> Math.abs(v - median)).toArray());
    double deviation = Math.max(NORMAL * apart, LEAST_SHARE * Math.abs(median));
    return Optional.of(new Spread(median, deviation, values));
  }

  /** Where a pair lies: how many deviations above the median, below it where negative. */
  public Optional<Double> score(int pair) {
    return Optional.ofNullable(values.get(pair))
        .filter(value -> deviation > 0)
        .map(value -> (value - median) / deviation);
  }

  /** Whether they agree so well that the deviation is the least that is allowed. */
  public boolean isLeast() {
    return deviation <= LEAST_SHARE * Math.abs(median);
  }

  /** Whether they are too few for one to lie outside. */
  public boolean isOfFew() {
    return values.size() < FEWEST;
  }

  /** The pairs that lie outside, with their scores. */
  public Map<Integer, Double> outside() {
    Map<Integer, Double> outside = new LinkedHashMap<>();
    if (!isOfFew()) {
      values.keySet().stream()
          .sorted()
          .forEach(
              pair ->
                  score(pair)
                      .filter(score -> Math.abs(score) > OUTSIDE)
                      .ifPresent(score -> outside.put(pair, score)));
    }
    return outside;
  }
}
