package faintwind.calibration.speed.state;

import org.apache.commons.math3.stat.descriptive.rank.Median;

/** The usual time between rows: the median of the last steps. For one log and one thread. */
public final class UsualStep {
  static final int LOOK_BACK = 31;
  static final int NEEDED = 3;

  private final double[] last_s = new double[LOOK_BACK];
  private int count;
  private double median_s;

  /** Whether enough steps are known. */
  public boolean isKnown() {
    return count >= NEEDED;
  }

  /** Median of the last steps, s. */
  public double median_s() {
    return median_s;
  }

  public void add(double step_s) {
    last_s[count % LOOK_BACK] = step_s;
    count++;
    if (count <= LOOK_BACK || count % LOOK_BACK == 0) {
      median_s = new Median().evaluate(last_s, 0, Math.min(count, LOOK_BACK));
    }
  }
}
