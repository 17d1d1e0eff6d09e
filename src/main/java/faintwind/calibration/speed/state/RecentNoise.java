package faintwind.calibration.speed.state;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;

/** Noise of a row in a stream, from its last rows ({@link NoiseLevel}). For one log. */
public final class RecentNoise {
  static final int ROWS = 120;
  static final int BETWEEN = 40;

  private final double calibrated;
  private final double stillSignal;
  private final Deque<PreparedRow> last = new ArrayDeque<>();
  private int sinceLook = BETWEEN;
  private NoiseLevel level = new NoiseLevel(0, 0);

  /**
   * Before any row.
   *
   * @param calibrated noise of a row in the calibration, signal unit
   * @param stillSignal signal in still air
   */
  public RecentNoise(double calibrated, double stillSignal) {
    this.calibrated = calibrated;
    this.stillSignal = stillSignal;
  }

  /** The level with this row taken in. */
  public NoiseLevel level(PreparedRow row) {
    last.addLast(row);
    if (last.size() > ROWS) {
      last.removeFirst();
    }
    if (++sinceLook >= BETWEEN) {
      sinceLook = 0;
      level = NoiseLevel.of(new ArrayList<>(last), calibrated, stillSignal);
    }
    return level;
  }
}
