package faintwind.calibration.speed.state;

import org.apache.commons.math3.stat.descriptive.rank.Median;

/** The usual time between rows: the median of the last steps. For one log and one thread. */
public final class UsualStep {
  static final int LOOK_BACK = 31;
  static final int NEEDED = 3;

  private final double[] last_s = new double[LOOK_BACK];
  private int count;

  /** How many of the last steps are the same. */
  private int alike;

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
    alike = step_s == last_s[lookBack(count - 1)] ? alike + 1 : 1;
    last_s[lookBack(count)] = step_s;
    count++;
    if (count <= LOOK_BACK || count % LOOK_BACK == 0) {
      int size = Math.min(count, LOOK_BACK);
      median_s = alike >= size ? step_s : new Median().evaluate(last_s, 0, size);
    }
  }

  private static int lookBack(int count) {
    return Math.floorMod(count, LOOK_BACK);
  }
}
