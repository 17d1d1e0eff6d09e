package faintwind.calibration.fit.track;

import java.util.Arrays;

/** Speed of the arm through the room along a track, and its change with the unknowns. */
public final class ArmAt {
  private final Track track;
  private final int[][] local;
  private double carrying;

  public ArmAt(Track track, int[] columns) {
    this.track = track;
    this.local = new int[track.turns.size()][];
    for (int i = 0; i < local.length; i++) {
      local[i] =
          Arrays.stream(track.turns.get(i).columns().all()).map(c -> place(columns, c)).toArray();
    }
  }

  private static int place(int[] columns, int column) {
    for (int i = 0; i < columns.length; i++) {
      if (column >= 0 && columns[i] == column) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the turn of the last call carries air round, 1 or 0. */
  public double carrying() {
    return carrying;
  }

  /** Speed at a time, m/s, signed. */
  public double speed(double[] values, double t) {
    return speed(values, t, null);
  }

  /** The same; adds its change with the track's columns to {@code by}. */
  public double speed(double[] values, double t, double @org.jspecify.annotations.Nullable [] by) {
    carrying = 0;
    double sum = 0;
    for (int i = 0; i < local.length; i++) {
      Turn turn = track.turns.get(i);
      Turn.Columns own = turn.columns();
      double sinceStart = t - turn.start_s() - value(values, own.start());
      double sinceStop = t - turn.stop_s() - value(values, own.stop());
      double runUp = width(values, own.runUp());
      double runDown = width(values, own.runDown());
      double up = Turn.ramp(sinceStart, runUp);
      double down = 1 - Turn.ramp(sinceStop, runDown);
      double on = up * down;
      if (on == 0) {
        continue;
      }
      double errors = (1 + value(values, own.speed())) * (1 + value(values, own.radius()));
      double full = turn.speed_m_s() * errors;
      carrying = turn.carries();
      sum += full * on;
      if (by != null) {
        int[] at = local[i];
        add(by, at[0], full * on / (1 + value(values, own.speed())));
        add(by, at[1], full * on / (1 + value(values, own.radius())));
        double upSlope = full * down * Turn.rampSlope(sinceStart, runUp);
        double downSlope = full * up * Turn.rampSlope(sinceStop, runDown);
        add(by, at[2], -upSlope);
        add(by, at[3], downSlope);
        add(by, at[4], -upSlope * sinceStart / runUp);
        add(by, at[5], downSlope * sinceStop / runDown);
      }
    }
    return sum;
  }

  private static double value(double[] values, int column) {
    return column >= 0 ? values[column] : 0;
  }

  /** Time of running up or down; that of a turn which has neither does not matter. */
  private static double width(double[] values, int column) {
    return column >= 0 ? values[column] : 1;
  }

  private static void add(double[] by, int place, double amount) {
    if (place >= 0) {
      by[place] += amount;
    }
  }
}
