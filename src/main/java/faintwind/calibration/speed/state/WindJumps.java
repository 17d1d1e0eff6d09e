package faintwind.calibration.speed.state;

import java.util.List;
import java.util.TreeMap;
import java.util.function.IntPredicate;

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
  private static final double LEAST_CHANGE = 0.05;
  private static final double LEAST_RATIO = 0.5;

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

  /**
   * Looks for further ones in a smoothed block; tells whether there are any.
   *
   * @param heated whether the heater is beyond doubt at a row: losing it looks like a jump too
   */
  public boolean lookFor(BlockTrace smoothed, List<PreparedRow> rows, IntPredicate heated) {
    int before = change.size();
    int best = -1;
    for (int i = 1; i + 1 < rows.size(); i++) {
      if (stands(smoothed, i) && !isKnown(rows, i) && heated.test(i)) {
        best = best < 0 || smoothed.shockScore(i) > smoothed.shockScore(best) ? i : best;
      }
      boolean passed = best >= 0 && rows.get(i).time_s() > rows.get(best).time_s() + REACH_S;
      if (passed || (best >= 0 && i + 2 == rows.size())) {
        change.put(best, smoothed.shock(best));
        best = -1;
      }
    }
    return change.size() > before;
  }

  private static boolean stands(BlockTrace smoothed, int row) {
    double ratio = Math.max(LEAST_RATIO, smoothed.mean(row, HeatState.RATIO));
    return smoothed.shockScore(row) > DEVIATIONS
        && Math.abs(smoothed.shock(row)) > LEAST_CHANGE * ratio;
  }

  private boolean isKnown(List<PreparedRow> rows, int row) {
    Integer low = change.floorKey(row);
    Integer high = change.ceilingKey(row);
    double time_s = rows.get(row).time_s();
    return (low != null && time_s - rows.get(low).time_s() < REACH_S)
        || (high != null && rows.get(high).time_s() - time_s < REACH_S);
  }
}
