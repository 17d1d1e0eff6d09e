package faintwind.calibration.speed.state;

import java.util.List;
import java.util.TreeMap;

/**
 * Sudden changes of the wind within a block, found in the smoothed loss: where it changes within
 * some seconds by more than four standard deviations of its own walk. There the walk is given room
 * for the whole change, so that the smoother does not round the edge, and averages do not reach
 * across. Treating outliers of a random walk so is common practice (intervention, Harvey and
 * Koopman 1992). For one block.
 */
public final class WindJumps {
  private static final double REACH_S = 10;
  private static final double DEVIATIONS = 4;
  private static final double LEAST_CHANGE = 0.08;

  private final TreeMap<Integer, Double> change = new TreeMap<>();

  /** Whether none was found. */
  public boolean isEmpty() {
    return change.isEmpty();
  }

  /** Variance that the loss ratio is given for the step to a row. */
  public double variance(int row) {
    double sum = 0;
    for (int at = row - 1; at <= row + 1; at++) {
      Double jump = change.get(at);
      sum += jump == null ? 0 : jump * jump;
    }
    return sum;
  }

  /** Whether a row is the first that lies wholly after a sudden change. */
  public boolean startsAt(int row) {
    return change.containsKey(row - 1);
  }

  /** Whether a row lies within a sudden change, and so belongs to the wind on neither side. */
  public boolean isWithin(int row) {
    return change.containsKey(row) || change.containsKey(row - 1) || change.containsKey(row + 1);
  }

  /** Looks for further ones in a smoothed block; tells whether there are any. */
  public boolean lookFor(BlockTrace smoothed, List<PreparedRow> rows, double walk2_1_s) {
    int before = change.size();
    int low = 0;
    int high = 0;
    int best = -1;
    double bestExcess = 0;
    for (int i = 1; i + 1 < rows.size(); i++) {
      double time_s = rows.get(i).time_s();
      while (low + 1 < i && rows.get(low + 1).time_s() <= time_s - REACH_S) {
        low++;
      }
      while (high + 1 < rows.size() && (high <= i || rows.get(high).time_s() < time_s + REACH_S)) {
        high++;
      }
      double excess = excess(smoothed, rows, low, high, walk2_1_s);
      if (excess > bestExcess && !isKnown(low, high)) {
        bestExcess = excess;
        best = i;
      }
      boolean passed = best >= 0 && time_s > rows.get(best).time_s() + 2 * REACH_S;
      if (passed || (best >= 0 && i + 2 == rows.size())) {
        put(smoothed, rows, best);
        best = -1;
        bestExcess = 0;
      }
    }
    return change.size() > before;
  }

  private boolean isKnown(int low, int high) {
    return !change.subMap(low, true, high + 1, true).isEmpty();
  }

  private static double excess(
      BlockTrace smoothed, List<PreparedRow> rows, int low, int high, double walk2_1_s) {
    double from = ratio(smoothed, low);
    double to = ratio(smoothed, high);
    double duration_s = rows.get(high).time_s() - rows.get(low).time_s();
    double variance =
        walk2_1_s * duration_s + smoothed.logLossVariance(low) + smoothed.logLossVariance(high);
    double jump = Math.abs(Math.log(to / from));
    double needed = Math.max(LEAST_CHANGE, DEVIATIONS * Math.sqrt(variance));
    return jump > needed && duration_s < 6 * REACH_S ? jump / needed : 0;
  }

  /** Notes the change at the steepest row about a place. */
  private void put(BlockTrace smoothed, List<PreparedRow> rows, int about) {
    int steepest = about;
    double most = 0;
    int from = about;
    while (from > 1 && rows.get(from).time_s() > rows.get(about).time_s() - REACH_S) {
      from--;
    }
    int to = about;
    while (to + 1 < rows.size() && rows.get(to).time_s() < rows.get(about).time_s() + REACH_S) {
      to++;
    }
    for (int i = from; i <= to; i++) {
      double slope = Math.abs(ratio(smoothed, i) - ratio(smoothed, i - 1)) / rows.get(i).step_s();
      if (slope > most) {
        most = slope;
        steepest = i;
      }
    }
    change.put(steepest, ratio(smoothed, to) - ratio(smoothed, from - 1));
  }

  private static double ratio(BlockTrace smoothed, int row) {
    return Math.max(0.5, smoothed.mean(row, HeatState.RATIO));
  }
}
