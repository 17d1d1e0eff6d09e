package faintwind.calibration.fit.track;

import java.util.Arrays;

/** Speed of the arm through the room along a track, and its change with the unknowns. */
public final class ArmAt {
  private final Track track;
  private final int[][] local;
  private final int[][] shared;
  private double carrying;
  private int last = -1;

  public ArmAt(Track track, int[] columns) {
    this.track = track;
    this.local = new int[track.turns.size()][];
    this.shared = new int[track.turns.size()][];
    for (int i = 0; i < local.length; i++) {
      Turn.Columns own = track.turns.get(i).columns();
      local[i] = Arrays.stream(own.all()).map(c -> place(columns, c)).toArray();
      shared[i] = Arrays.stream(own.arm().all()).map(c -> place(columns, c)).toArray();
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
      double clock = value(values, own.arm().clock());
      double sinceStart = t - turn.start_s() - value(values, own.start()) - clock;
      double sinceStop = t - turn.stop_s() - value(values, own.stop()) - clock;
      double runUp = width(values, own.runUp()) * width(values, own.arm().runUp());
      double runDown = width(values, own.runDown()) * width(values, own.arm().runDown());
      double up = Turn.ramp(sinceStart, runUp);
      double down = 1 - Turn.ramp(sinceStop, runDown);
      if (up * down == 0) {
        continue;
      }
      carrying = turn.carries();
      last = i;
      double full = full(turn, values);
      sum += full * up * down;
      if (by != null) {
        int[] at = local[i];
        addFull(values, i, full * up * down, by);
        double upSlope = full * down * Turn.rampSlope(sinceStart, runUp);
        double downSlope = full * up * Turn.rampSlope(sinceStop, runDown);
        add(by, at[2], -upSlope);
        add(by, at[3], downSlope);
        add(by, shared[i][4], downSlope - upSlope);
        addRunUp(values, i, -upSlope * sinceStart / runUp, by);
        double byDown = downSlope * sinceStop / runDown;
        add(by, at[5], byDown * width(values, own.arm().runDown()));
        add(by, shared[i][3], byDown * width(values, own.runDown()));
      }
    }
    return sum;
  }

  /** Logarithm of the time of a turn, over the usual one, of the last turn met. */
  public double lastLogTurn() {
    return last < 0 ? 0 : track.turns.get(last).count().logTurn();
  }

  /** Size of the full speed of the last turn that {@link #speed} met, m/s. */
  public double lastFull(double[] values) {
    return last < 0 ? 0 : Math.abs(full(track.turns.get(last), values));
  }

  /** Full speed of a turn once the arm has run up, m/s, signed. */
  public static double full(Turn turn, double[] values) {
    Turn.Columns own = turn.columns();
    double side = turn.speed_m_s() < 0 ? -1 : 1;
    return turn.speed_m_s()
        * (1 + value(values, own.speed()))
        * (1 + value(values, own.radius()))
        * (1 + side * value(values, own.arm().asymmetry()))
        * turn.count().gain(lost_s(turn, values));
  }

  /** Full speed over the mean speed of the counted time. */
  public static double gain(Turn turn, double[] values) {
    return turn.count().gain(lost_s(turn, values));
  }

  private static double lost_s(Turn turn, double[] values) {
    Turn.Columns own = turn.columns();
    double runUp = width(values, own.runUp()) * width(values, own.arm().runUp());
    double delay = value(values, own.start()) + value(values, own.arm().clock());
    return turn.count().lost_s(runUp, delay, value(values, own.arm().fromRest()));
  }

  /** Adds the change of the full speed, here {@code now}, with what it is made of. */
  private void addFull(double[] values, int i, double now, double[] by) {
    Turn turn = track.turns.get(i);
    Turn.Columns own = turn.columns();
    int[] at = local[i];
    double side = turn.speed_m_s() < 0 ? -1 : 1;
    add(by, at[0], now / (1 + value(values, own.speed())));
    add(by, at[1], now / (1 + value(values, own.radius())));
    add(by, shared[i][2], side * now / (1 + side * value(values, own.arm().asymmetry())));
    double runUp = width(values, own.runUp()) * width(values, own.arm().runUp());
    double delay = value(values, own.start()) + value(values, own.arm().clock());
    double fromRest = value(values, own.arm().fromRest());
    CountedTime count = turn.count();
    double byLost = now * gain(turn, values) / count.window_s();
    addRunUp(values, i, byLost * count.byRunUp(runUp, delay, fromRest), by);
    add(by, at[2], byLost * count.byDelay(runUp, delay));
    add(by, shared[i][4], byLost * count.byDelay(runUp, delay));
    add(by, shared[i][1], byLost * count.byFromRest(runUp));
  }

  /** A change with the run-up goes to its own part and to that of all runs. */
  private void addRunUp(double[] values, int i, double amount, double[] by) {
    Turn.Columns own = track.turns.get(i).columns();
    add(by, local[i][4], amount * width(values, own.arm().runUp()));
    add(by, shared[i][0], amount * width(values, own.runUp()));
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
