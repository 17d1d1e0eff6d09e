package faintwind.calibration.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.Arrays;
import java.util.Set;

/**
 * The rows of a converted log with the time that each stands for: until the next row; a row before
 * a break longer than ten usual steps stands for one usual step. Rows that warm up, have no power
 * or no speed stand for time too, but for no speed. Owns its arrays; immutable.
 */
public final class SpeedSeries {
  private static final double BREAK_STEPS = 10;
  private static final byte FAINT = 1;
  private static final byte BEYOND = 2;
  private static final byte LEFT_OUT = 4;

  private final double[] time_s;
  private final double[] speed_m_s;
  private final double[] u95_m_s;
  private final double[] lasts_s;
  private final byte[] kind;

  private SpeedSeries(Builder rows) {
    int size = rows.size;
    time_s = Arrays.copyOf(rows.time_s, size);
    speed_m_s = Arrays.copyOf(rows.speed_m_s, size);
    u95_m_s = Arrays.copyOf(rows.u95_m_s, size);
    kind = Arrays.copyOf(rows.kind, size);
    lasts_s = new double[size];
    double usual_s = usualStep_s(time_s);
    for (int i = 0; i < size; i++) {
      double step_s = i + 1 < size ? time_s[i + 1] - time_s[i] : usual_s;
      lasts_s[i] = step_s > BREAK_STEPS * usual_s ? usual_s : step_s;
    }
  }

  private static double usualStep_s(double[] time_s) {
    if (time_s.length < 2) {
      return 1;
    }
    double[] steps_s = new double[time_s.length - 1];
    for (int i = 0; i < steps_s.length; i++) {
      steps_s[i] = time_s[i + 1] - time_s[i];
    }
    Arrays.sort(steps_s);
    return steps_s[steps_s.length / 2];
  }

  /** Gathers rows in their order. */
  public static final class Builder {
    private static final Set<SpeedFlag> MEANS_NOTHING =
        Set.of(SpeedFlag.WARMUP, SpeedFlag.POWER, SpeedFlag.BAD);

    private double[] time_s = new double[1024];
    private double[] speed_m_s = new double[1024];
    private double[] u95_m_s = new double[1024];
    private byte[] kind = new byte[1024];
    private int size;

    /** Takes the next row; one whose time does not rise is passed over. */
    public void add(double at_s, SpeedRow row) {
      if (size > 0 && at_s <= time_s[size - 1]) {
        return;
      }
      grow();
      time_s[size] = at_s;
      speed_m_s[size] = row.speed_m_s().orElse(0);
      u95_m_s[size] = row.u95_m_s().orElse(0);
      kind[size] = kindOf(row);
      size++;
    }

    private static byte kindOf(SpeedRow row) {
      if (row.speed_m_s().isEmpty() || row.flags().stream().anyMatch(MEANS_NOTHING::contains)) {
        return LEFT_OUT;
      }
      int faint = row.flags().contains(SpeedFlag.FLOOR) ? FAINT : 0;
      return (byte) (row.flags().contains(SpeedFlag.ABOVE) ? faint | BEYOND : faint);
    }

    private void grow() {
      if (size == time_s.length) {
        time_s = Arrays.copyOf(time_s, 2 * size);
        speed_m_s = Arrays.copyOf(speed_m_s, 2 * size);
        u95_m_s = Arrays.copyOf(u95_m_s, 2 * size);
        kind = Arrays.copyOf(kind, 2 * size);
      }
    }

    public int size() {
      return size;
    }

    public SpeedSeries build() {
      return new SpeedSeries(this);
    }
  }

  public int size() {
    return time_s.length;
  }

  public double time_s(int row) {
    return time_s[row];
  }

  public double speed_m_s(int row) {
    return speed_m_s[row];
  }

  public double u95_m_s(int row) {
    return u95_m_s[row];
  }

  /** How long the row stands for. */
  public double lasts_s(int row) {
    return lasts_s[row];
  }

  /** Whether the speed means anything. */
  public boolean isUsed(int row) {
    return (kind[row] & LEFT_OUT) == 0;
  }

  /** Whether it cannot be told from still air. */
  public boolean isFaint(int row) {
    return (kind[row] & FAINT) != 0;
  }

  /** Whether it lies beyond the calibrated speeds. */
  public boolean isBeyond(int row) {
    return (kind[row] & BEYOND) != 0;
  }

  /** The first row at or after a time; the size where there is none. */
  public int from(double at_s) {
    int found = Arrays.binarySearch(time_s, at_s);
    return found >= 0 ? found : -found - 1;
  }

  /** Time of the rows that are used, s. */
  public double used_s() {
    double sum_s = 0;
    for (int i = 0; i < size(); i++) {
      sum_s += isUsed(i) ? lasts_s[i] : 0;
    }
    return sum_s;
  }
}
