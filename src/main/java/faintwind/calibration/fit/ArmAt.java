package faintwind.calibration.fit;

/** Speed of the arm through the room along a track, and its change with the unknowns. */
final class ArmAt {
  private final Track track;
  private final int[][] local;
  private final int rampColumn;
  private final int rampPlace;
  private double carrying;

  ArmAt(Track track, int[] columns, int rampColumn) {
    this.track = track;
    this.rampColumn = rampColumn;
    this.rampPlace = place(columns, rampColumn);
    this.local = new int[track.turns.size()][];
    for (int i = 0; i < local.length; i++) {
      Turn.Columns own = track.turns.get(i).columns();
      local[i] =
          new int[] {
            place(columns, own.speed()),
            place(columns, own.radius()),
            place(columns, own.start()),
            place(columns, own.stop())
          };
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
  double carrying() {
    return carrying;
  }

  /** Speed at a time, m/s, signed. */
  double speed(double[] values, double t) {
    return speed(values, t, null);
  }

  /** The same; adds its change with the track's columns to {@code by}. */
  double speed(double[] values, double t, double @org.jspecify.annotations.Nullable [] by) {
    carrying = 0;
    double width = values[rampColumn];
    double sum = 0;
    for (int i = 0; i < local.length; i++) {
      Turn turn = track.turns.get(i);
      Turn.Columns own = turn.columns();
      double sinceStart = t - turn.start_s() - value(values, own.start());
      double sinceStop = t - turn.stop_s() - value(values, own.stop());
      double up = Turn.ramp(sinceStart, width);
      double down = 1 - Turn.ramp(sinceStop, width);
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
        double upSlope = full * down * Turn.rampSlope(sinceStart, width);
        double downSlope = full * up * Turn.rampSlope(sinceStop, width);
        add(by, at[2], -upSlope);
        add(by, at[3], downSlope);
        if (upSlope != 0) {
          by[rampPlace] -= upSlope * sinceStart / width;
        }
        if (downSlope != 0) {
          by[rampPlace] += downSlope * sinceStop / width;
        }
      }
    }
    return sum;
  }

  private static double value(double[] values, int column) {
    return column >= 0 ? values[column] : 0;
  }

  private static void add(double[] by, int place, double amount) {
    if (place >= 0) {
      by[place] += amount;
    }
  }
}
