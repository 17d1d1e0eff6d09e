package faintwind.calibration.fit.track;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Speed of the arm through the room along a track, and its change with the unknowns. What does not
 * change along the track is computed once, by {@link #set}.
 */
public final class ArmAt {
  private static final int SPEED = 0;
  private static final int RADIUS = 1;
  private static final int START = 2;
  private static final int STOP = 3;
  private static final int RUN_UP = 4;
  private static final int RUN_DOWN = 5;
  private static final int ARM_RUN_UP = 6;
  private static final int FROM_REST = 7;
  private static final int ASYMMETRY = 8;
  private static final int ARM_RUN_DOWN = 9;
  private static final int CLOCK = 10;
  private static final int UNKNOWNS = 11;

  private final Turn[] turns;

  /** Columns of the unknowns of each turn, in the order above; −1 where there is none. */
  private final int[][] places;

  /** How many leading columns hold all of a turn. */
  private final int[] reach;

  private final double[] start_s;
  private final double[] stop_s;
  private final double[] runUp_s;
  private final double[] runDown_s;
  private final double[] full;
  private final double[][] relative;
  private final double[] by = new double[UNKNOWNS];
  private double carrying;
  private int last = -1;
  private int begun;

  public ArmAt(Track track, int[] columns) {
    turns = track.turns.toArray(new Turn[0]);
    int n = turns.length;
    places = new int[n][];
    reach = new int[n];
    start_s = new double[n];
    stop_s = new double[n];
    runUp_s = new double[n];
    runDown_s = new double[n];
    full = new double[n];
    relative = new double[n][UNKNOWNS];
    for (int i = 0; i < n; i++) {
      Turn.Columns own = turns[i].columns();
      places[i] =
          IntStream.concat(Arrays.stream(own.all()), Arrays.stream(own.arm().all()))
              .map(c -> place(columns, c))
              .toArray();
      reach[i] = Arrays.stream(places[i]).max().orElse(-1) + 1;
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

  /** Begins a run through the track with these values of all unknowns. */
  public void set(double[] values) {
    carrying = 0;
    last = -1;
    begun = 0;
    for (int i = 0; i < turns.length; i++) {
      Turn turn = turns[i];
      Turn.Columns own = turn.columns();
      double clock = value(values, own.arm().clock());
      start_s[i] = turn.start_s() + value(values, own.start()) + clock;
      stop_s[i] = turn.stop_s() + value(values, own.stop()) + clock;
      runUp_s[i] = width(values, own.runUp()) * width(values, own.arm().runUp());
      runDown_s[i] = width(values, own.runDown()) * width(values, own.arm().runDown());
      full[i] = full(turn, values);
      setRelative(values, turn, runUp_s[i], relative[i]);
    }
  }

  /** Relative change of the full speed with what it is made of. */
  private static void setRelative(double[] values, Turn turn, double runUp, double[] relative) {
    Turn.Columns own = turn.columns();
    double side = turn.speed_m_s() < 0 ? -1 : 1;
    double delay = value(values, own.start()) + value(values, own.arm().clock());
    double fromRest = value(values, own.arm().fromRest());
    CountedTime count = turn.count();
    double byLost = gain(turn, values) / count.window_s();
    double byRunUp = byLost * count.byRunUp(runUp, delay, fromRest);
    relative[SPEED] = 1 / (1 + value(values, own.speed()));
    relative[RADIUS] = 1 / (1 + value(values, own.radius()));
    relative[ASYMMETRY] = side / (1 + side * value(values, own.arm().asymmetry()));
    relative[RUN_UP] = byRunUp * width(values, own.arm().runUp());
    relative[ARM_RUN_UP] = byRunUp * width(values, own.runUp());
    relative[START] = byLost * count.byDelay(runUp, delay);
    relative[CLOCK] = relative[START];
    relative[FROM_REST] = byLost * count.byFromRest(runUp);
  }

  /** Whether the turn of the last call carries air round, 1 or 0. */
  public double carrying() {
    return carrying;
  }

  /** How many leading columns hold all of the turns that began since {@link #set}. */
  public int begun() {
    return begun;
  }

  /** Speed at a time, m/s, signed. */
  public double speed(double t) {
    carrying = 0;
    double sum = 0;
    for (int i = 0; i < turns.length; i++) {
      double share = share(i, t);
      if (share != 0) {
        carrying = turns[i].carries();
        last = i;
        sum += full[i] * share;
      }
    }
    return sum;
  }

  private double share(int i, double t) {
    return t <= start_s[i]
        ? 0
        : Turn.ramp(t - start_s[i], runUp_s[i]) * (1 - Turn.ramp(t - stop_s[i], runDown_s[i]));
  }

  /**
   * Adds the change of the speed at a time with the track's columns to the changes of three states.
   *
   * @param t time
   * @param values values of all unknowns
   * @param factors of the three
   * @param changes the three, each by column
   */
  public void addChange(double t, double[] values, double[] factors, double[][] changes) {
    for (int i = 0; i < turns.length; i++) {
      double share = share(i, t);
      if (share == 0) {
        continue;
      }
      changeOf(i, t, values, share);
      begun = Math.max(begun, reach[i]);
      for (int u = 0; u < UNKNOWNS; u++) {
        int place = places[i][u];
        if (place >= 0 && by[u] != 0) {
          changes[0][place] += factors[0] * by[u];
          changes[1][place] += factors[1] * by[u];
          changes[2][place] += factors[2] * by[u];
        }
      }
    }
  }

  private void changeOf(int i, double t, double[] values, double share) {
    double now = full[i] * share;
    for (int u = 0; u < UNKNOWNS; u++) {
      by[u] = now * relative[i][u];
    }
    double sinceStart = t - start_s[i];
    double sinceStop = t - stop_s[i];
    Turn.Columns own = turns[i].columns();
    double upSlope = Turn.rampSlope(sinceStart, runUp_s[i]);
    if (upSlope != 0) {
      upSlope *= full[i] * (1 - Turn.ramp(sinceStop, runDown_s[i]));
      double byRunUp = upSlope * sinceStart / runUp_s[i];
      by[START] -= upSlope;
      by[CLOCK] -= upSlope;
      by[RUN_UP] -= byRunUp * width(values, own.arm().runUp());
      by[ARM_RUN_UP] -= byRunUp * width(values, own.runUp());
    }
    double downSlope = Turn.rampSlope(sinceStop, runDown_s[i]);
    if (downSlope != 0) {
      downSlope *= full[i] * Turn.ramp(sinceStart, runUp_s[i]);
      double byRunDown = downSlope * sinceStop / runDown_s[i];
      by[STOP] += downSlope;
      by[CLOCK] += downSlope;
      by[RUN_DOWN] += byRunDown * width(values, own.arm().runDown());
      by[ARM_RUN_DOWN] += byRunDown * width(values, own.runDown());
    }
  }

  /** Logarithm of the time of a turn, over the usual one, of the last turn met. */
  public double lastLogTurn() {
    return last < 0 ? 0 : turns[last].count().logTurn();
  }

  /** Size of the full speed of the last turn that {@link #speed} met, m/s. */
  public double lastFull() {
    return last < 0 ? 0 : Math.abs(full[last]);
  }

  /** Full speed of a turn once the arm has run up, m/s, signed. */
  private static double full(Turn turn, double[] values) {
    Turn.Columns own = turn.columns();
    double side = turn.speed_m_s() < 0 ? -1 : 1;
    return turn.speed_m_s()
        * (1 + value(values, own.speed()))
        * (1 + value(values, own.radius()))
        * (1 + side * value(values, own.arm().asymmetry()))
        * gain(turn, values);
  }

  /** Full speed over the mean speed of the counted time. */
  public static double gain(Turn turn, double[] values) {
    Turn.Columns own = turn.columns();
    double runUp = width(values, own.runUp()) * width(values, own.arm().runUp());
    double delay = value(values, own.start()) + value(values, own.arm().clock());
    CountedTime count = turn.count();
    return count.gain(count.lost_s(runUp, delay, value(values, own.arm().fromRest())));
  }

  private static double value(double[] values, int column) {
    return column >= 0 ? values[column] : 0;
  }

  /** Time of running up or down; that of a turn which has neither does not matter. */
  private static double width(double[] values, int column) {
    return column >= 0 ? values[column] : 1;
  }
}
