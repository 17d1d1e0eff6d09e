package faintwind.calibration.speed;

import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.PreparedRow;
import java.util.Deque;

/** Time-weighted sums over the rows of an average. For one log and one thread. */
final class WeightedSums {
  private static final int REFRESH = 2000;
  private double weight;
  private double speed;
  private double logLoss;
  private double variance;
  private double memoryTime;
  private int removed;
  private final ErrorMemory memory;

  WeightedSums(ErrorMemory memory) {
    this.memory = memory;
  }

  void add(EstimatedRow row) {
    put(row, weightOf(row));
  }

  void remove(EstimatedRow row) {
    put(row, -weightOf(row));
    removed++;
  }

  /** Sums anew now and then, so that rounding does not gather. */
  void refresh(Deque<EstimatedRow> rows) {
    if (removed < REFRESH) {
      return;
    }
    clear();
    rows.forEach(this::add);
  }

  void clear() {
    removed = 0;
    weight = 0;
    speed = 0;
    logLoss = 0;
    variance = 0;
    memoryTime = 0;
  }

  /** Time that the rows stand for, s. */
  double weight_s() {
    return weight;
  }

  double speed_m_s() {
    return Math.max(0, speed / weight);
  }

  double logLoss() {
    return logLoss / weight;
  }

  /** Variance of the mean logarithm of the loss, what averaging takes off it taken off. */
  double variance() {
    double single = Math.max(0, variance / weight);
    return single * memory.left(weight, memoryTime / weight);
  }

  private void put(EstimatedRow row, double w) {
    weight += w;
    speed += w * row.speed_m_s();
    logLoss += w * row.estimate().logLoss();
    variance += w * row.estimate().variance();
    memoryTime += w * row.estimate().memory_s();
  }

  private static double weightOf(EstimatedRow row) {
    double step_s = row.row().step_s();
    boolean joined = row.row().kind() == PreparedRow.Kind.USUAL;
    return joined || (step_s > 0 && step_s < 1) ? step_s : 1;
  }
}
