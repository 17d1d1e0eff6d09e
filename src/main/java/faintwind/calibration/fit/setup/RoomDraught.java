package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.track.Track;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Draught of the room during a session. It is not the same all day: each run has its own, a factor
 * on the usual one. What counts for the loss of still air is the root mean square.
 *
 * @param usual index of the usual draught
 * @param own indices of the runs' factors
 */
public record RoomDraught(int usual, List<Integer> own) {
  public RoomDraught {
    own = List.copyOf(own);
  }

  static RoomDraught of(Layout layout, List<Track> tracks) {
    IntStream all = tracks.stream().flatMapToInt(track -> IntStream.of(track.draughtColumns));
    return new RoomDraught(layout.draught(), all.boxed().toList());
  }

  /**
   * Root mean square of the runs' draughts, m/s.
   *
   * @param values of all unknowns
   */
  public double m_s(double[] values) {
    return values[usual] * overUsual(values);
  }

  /** The same over the usual draught. */
  public double overUsual(double[] values) {
    return Math.sqrt(squares(values) / own.size());
  }

  /** Relative change of {@link #m_s} with every unknown. */
  public double[] relativeBy(double[] values) {
    double[] by = new double[values.length];
    by[usual] = 1 / values[usual];
    double squares = squares(values);
    own.forEach(column -> by[column] = values[column] / squares);
    return by;
  }

  private double squares(double[] values) {
    return own.stream().mapToDouble(column -> values[column] * values[column]).sum();
  }
}
