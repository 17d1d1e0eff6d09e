package faintwind.calibration.speed;

import faintwind.calibration.response.QuickCurve;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.PreparedRow;
import java.util.Deque;

/** Time-weighted sums over the rows of an average. For one log and one thread. */
final class WeightedSums {
  private static final int REFRESH = 2000;

  private final QuickCurve left;
  private double weight;
  private double speed;
  private double logLoss;
  private double variance;
  private double memoryTime;
  private int removed;

  WeightedSums(ErrorMemory memory) {
    left = memory.curve();
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

  /** Their mean, given the first and the last of the rows. */
  Mean mean(EstimatedRow first, EstimatedRow last) {
    double lasted_s = last.row().time_s() - first.row().time_s();
    double rate_m_s2 = lasted_s > 0 ? (last.speed_m_s() - first.speed_m_s()) / lasted_s : 0;
    // what averaging takes off the variance is taken off
    double left = ErrorMemory.left(this.left, weight, memoryTime / weight);
    return new Mean(
        Math.max(0, speed / weight),
        logLoss / weight,
        Math.max(0, variance / weight) * left,
        rate_m_s2);
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

  /**
   * What was found for a row or over several.
   *
   * @param speed_m_s speed, averaged or not
   * @param logLoss ln(loss / loss of still air) over the same rows
   * @param variance of that, from the estimator alone
   * @param rate_m_s2 change of the speed over the rows, by their time; 0 for a single one
   */
  record Mean(double speed_m_s, double logLoss, double variance, double rate_m_s2) {

    static Mean of(EstimatedRow row) {
      EstimatedRow.Estimate own = row.estimate();
      return new Mean(row.speed_m_s(), own.logLoss(), own.variance(), 0);
    }
  }
}
