package faintwind.guide.turntable;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a warm-up goes, from three stretches of equal length: with means m1, m2, m3 an exponential
 * settles at (m1 m3 − m2²)/(m1 + m3 − 2 m2) with the time constant w / ln((m2 − m1)/(m3 − m2))
 * (Aitken 1926).
 *
 * @param settled where the signal settles
 * @param time_s time constant, s
 */
record WarmUpTrend(double settled, double time_s) {

  /** From a start to now; empty while too little is there or it does not bend as it should. */
  static Optional<WarmUpTrend> of(SignalHistory history, double from_s, double to_s) {
    double width_s = (to_s - from_s) / 3;
    OptionalDouble m1 = history.mean(from_s, from_s + width_s);
    OptionalDouble m2 = history.mean(from_s + width_s, from_s + 2 * width_s);
    OptionalDouble m3 = history.mean(from_s + 2 * width_s, to_s);
    if (width_s < 30 || m1.isEmpty() || m2.isEmpty() || m3.isEmpty()) {
      return Optional.empty();
    }
    double first = m2.getAsDouble() - m1.getAsDouble();
    double second = m3.getAsDouble() - m2.getAsDouble();
    double ratio = second / first;
    if (!(ratio > 0) || !(ratio < 0.97)) {
      return Optional.empty();
    }
    double settled = m3.getAsDouble() + second * ratio / (1 - ratio);
    // m3 is the mean of its stretch, not its end; the formula above continues the means
    return Optional.of(new WarmUpTrend(settled, -width_s / Math.log(ratio)));
  }
}
