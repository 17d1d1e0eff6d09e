package faintwind.calibration.fit.track;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Run;
import java.util.Arrays;
import java.util.List;

/**
 * One run file made ready for the fit: averaged rows, a grid of times to integrate over, air and
 * supply on that grid, and the turns. Rows that share a file share one state, so they are one
 * track. Owns its arrays; not changed after it is made, except for the weights of its rows, which
 * the fit settles.
 */
public final class Track {
  public final String file;

  /** Names of the runs, in the order that {@link Rows#run} counts. */
  public final List<String> runs;

  public final List<Turn> turns;
  public final Rows rows;
  public final Grid grid;
  public final int deltaColumn;
  public final int powerColumn;

  /** Columns of the runs' own draughts, in the order of {@link #runs}. */
  public final int[] draughtColumns;

  /** By time of the grid, the run to which the step after it belongs. */
  public final int[] runAt;

  public Track(
      FileRows file,
      List<Turn> turns,
      Rows rows,
      Grid grid,
      int deltaColumn,
      int powerColumn,
      int[] draughtColumns) {
    this.file = file.file();
    this.runs = file.runs().stream().map(Run::name).toList();
    this.turns = List.copyOf(turns);
    this.rows = rows;
    this.grid = grid;
    this.deltaColumn = deltaColumn;
    this.powerColumn = powerColumn;
    this.draughtColumns = draughtColumns.clone();
    this.runAt = Arrays.stream(grid.time_s).mapToInt(file::runAt).toArray();
  }

  /** The averaged rows. */
  public static final class Rows {
    public final double[] time_s;
    public final double[] signal;
    public final int[] count;
    public final int[] run;
    public final double[] sd;

    /** Factor on the strength of the wandering, 1 where the part is as calm as the others. */
    public final double[] wildness;

    public final boolean[] leftOut;

    /** Rows of runs that were set aside: left out for good. */
    public final boolean[] aside;

    public Rows(double[] time_s, double[] signal, int[] count, int[] run) {
      this.time_s = time_s;
      this.signal = signal;
      this.count = count;
      this.run = run;
      this.sd = new double[time_s.length];
      this.wildness = new double[time_s.length];
      this.leftOut = new boolean[time_s.length];
      this.aside = new boolean[time_s.length];
      Arrays.fill(wildness, 1);
    }

    /** The same rows as they were before a fit settled their weights. */
    public Rows unsettled() {
      Rows rows = new Rows(time_s, signal, count, run);
      System.arraycopy(sd, 0, rows.sd, 0, sd.length);
      return rows;
    }

    /** Leaves out what was recorded before a time, for good. */
    public void setAsideBefore(double until_s) {
      for (int i = 0; i < size() && time_s[i] < until_s; i++) {
        leftOut[i] = true;
        aside[i] = true;
      }
    }

    public int size() {
      return time_s.length;
    }
  }

  /** Times of integration, and what is known at or between them. */
  public static final class Grid {
    public final double[] time_s;

    /** Index of the averaged row that stands at this time, or −1. */
    public final int[] row;

    public final AirPoint[] air;

    /** Mean air temperature from this time to the next, K. */
    public final double[] air_K;

    /** Mean of (supply/nominal)² from this time to the next. */
    public final double[] power;

    Grid(double[] time_s, int[] row, AirPoint[] air, double[] air_K, double[] power) {
      this.time_s = time_s;
      this.row = row;
      this.air = air;
      this.air_K = air_K;
      this.power = power;
    }
  }
}
