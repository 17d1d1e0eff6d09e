package faintwind.calibration.speed;

import org.apache.commons.math3.stat.descriptive.rank.Median;

/** The usual time between rows: the median of the last steps. For one log and one thread. */
final class UsualStep {
  private static final int LOOK_BACK = 31;
  private static final int NEEDED = 3;

  private final double[] last_s = new double[LOOK_BACK];
  private int count;
  private double median_s;

  /** Whether enough steps are known. */
  boolean isKnown() {
    return count >= NEEDED;
  }

  double median_s() {
    return median_s;
  }

  void add(double step_s) {
    last_s[count % LOOK_BACK] = step_s;
    count++;
    if (count <= LOOK_BACK || count % LOOK_BACK == 0) {
      median_s = new Median().evaluate(last_s, 0, Math.min(count, LOOK_BACK));
    }
  }
}
