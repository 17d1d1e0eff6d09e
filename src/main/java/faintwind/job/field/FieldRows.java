package faintwind.job.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The converted rows of a log for looking at, in bounded memory: beyond {@link #MOST} rows, of each
 * four neighbours the two with the lowest and highest speed are kept, so that no gust is lost.
 * Where each flag stands is kept whole.
 */
public final class FieldRows {
  /** Rows kept at most. */
  static final int MOST = 400_000;

  private double[] time_s = new double[1024];
  private double[] signal = new double[1024];
  private double[] speed_m_s = new double[1024];
  private double[] u95_m_s = new double[1024];
  private boolean[] used = new boolean[1024];
  private int size;
  private final Map<SpeedFlag, List<Stretch>> stretches = new EnumMap<>(SpeedFlag.class);
  private final Map<SpeedFlag, Stretch> open = new EnumMap<>(SpeedFlag.class);

  /**
   * From one time to another, s.
   *
   * @param from_s first row that carries the flag
   * @param to_s last row
   */
  public record Stretch(double from_s, double to_s) {}

  /** Takes the next row; a row without a time cannot be shown and only counts elsewhere. */
  void add(OptionalDouble time, OptionalDouble raw, SpeedRow row) {
    if (time.isEmpty()) {
      return;
    }
    double t = time.getAsDouble();
    if (size > 0 && t <= time_s[size - 1]) {
      return;
    }
    noteFlags(t, row);
    if (raw.isEmpty() || row.speed_m_s().isEmpty()) {
      return;
    }
    grow();
    time_s[size] = t;
    signal[size] = raw.getAsDouble();
    speed_m_s[size] = row.speed_m_s().getAsDouble();
    u95_m_s[size] = row.u95_m_s().orElse(0);
    used[size] = !row.flags().contains(SpeedFlag.WARMUP) && !row.flags().contains(SpeedFlag.POWER);
    size++;
    if (size == MOST) {
      thin();
    }
  }

  private void noteFlags(double t, SpeedRow row) {
    for (SpeedFlag flag : SpeedFlag.values()) {
      Stretch last = open.get(flag);
      if (row.flags().contains(flag)) {
        open.put(flag, new Stretch(last == null ? t : last.from_s(), t));
      } else if (last != null) {
        // a row stands for the time until the next
        of(flag).add(new Stretch(last.from_s(), t));
        open.remove(flag);
      }
    }
  }

  private List<Stretch> of(SpeedFlag flag) {
    return stretches.computeIfAbsent(flag, f -> new ArrayList<>());
  }

  FieldRows finish() {
    open.forEach((flag, last) -> of(flag).add(last));
    open.clear();
    return this;
  }

  private void grow() {
    if (size == time_s.length) {
      int more = Math.min(MOST, 2 * size);
      time_s = Arrays.copyOf(time_s, more);
      signal = Arrays.copyOf(signal, more);
      speed_m_s = Arrays.copyOf(speed_m_s, more);
      u95_m_s = Arrays.copyOf(u95_m_s, more);
      used = Arrays.copyOf(used, more);
    }
  }

  private void thin() {
    int kept = 0;
    for (int from = 0; from + 4 <= size; from += 4) {
      int low = from;
      int high = from;
      for (int i = from; i < from + 4; i++) {
        low = speed_m_s[i] < speed_m_s[low] ? i : low;
        high = speed_m_s[i] >= speed_m_s[high] ? i : high;
      }
      move(Math.min(low, high), kept++);
      if (low != high) {
        move(Math.max(low, high), kept++);
      }
    }
    size = kept;
  }

  private void move(int from, int to) {
    time_s[to] = time_s[from];
    signal[to] = signal[from];
    speed_m_s[to] = speed_m_s[from];
    u95_m_s[to] = u95_m_s[from];
    used[to] = used[from];
  }

  public int size() {
    return size;
  }

  public double time_s(int row) {
    return time_s[row];
  }

  public double signal(int row) {
    return signal[row];
  }

  public double speed_m_s(int row) {
    return speed_m_s[row];
  }

  public double u95_m_s(int row) {
    return u95_m_s[row];
  }

  /** Whether the speed means anything: neither warming up nor without power. */
  public boolean isMeant(int row) {
    return used[row];
  }

  /** Where a flag stands. */
  public List<Stretch> stretches(SpeedFlag flag) {
    return List.copyOf(stretches.getOrDefault(flag, List.of()));
  }
}
