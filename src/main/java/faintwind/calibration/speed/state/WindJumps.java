package faintwind.calibration.speed.state;

import java.util.List;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/**
 * Sudden changes of the wind within a block, found in the smoothed loss: where it changes within
 * some seconds by more than four standard deviations of its own walk. There the walk is given room
 * for the whole change, so that the smoother does not round the edge, and averages do not reach
 * across. Treating outliers of a random walk so is common practice (intervention, Harvey and
 * Koopman 1992). For one block.
 */
public final class WindJumps {
  private final TreeSet<Integer> found = new TreeSet<>();
  private double[] room = new double[0];

  /** Whether none was found. */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** Variance that the loss ratio is given for the step to a row. */
  public double variance(int row) {
    return row < room.length ? room[row] : 0;
  }

  /** Whether a row is the first that lies wholly after a sudden change. */
  public boolean startsAt(int row) {
    return isWithin(row) && found.contains(row - 1);
  }

  /** Whether a row lies within a sudden change, and so belongs to the wind on neither side. */
  public boolean isWithin(int row) {
    return variance(row) > 0;
  }

  /**
   * Looks for further ones in a smoothed block; tells whether there are any.
   *
   * @param heated whether the heater is beyond doubt at a row: losing it looks like a jump too
   */
  public boolean lookFor(BlockTrace smoothed, List<PreparedRow> rows, IntPredicate heated) {
    int before = found.size();
    int best = -1;
    for (int i = 1; i + 1 < rows.size(); i++) {
      if (stands(smoothed, i) && !isKnown(rows, i) && heated.test(i)) {
        best = best < 0 || smoothed.shockScore(i) > smoothed.shockScore(best) ? i : best;
      }
      boolean passed =
          best >= 0 && rows.get(i).time_s() > rows.get(best).time_s() + OwnChoices.REACH_S;
      if (passed || (best >= 0 && i + 2 == rows.size())) {
        add(best, smoothed.shock(best), rows.size());
        best = -1;
      }
    }
    return found.size() > before;
  }

  private void add(int at, double jump, int rows) {
    found.add(at);
    room = room.length == 0 ? new double[rows] : room;
    for (int row = at - 1; row <= at + 1; row++) {
      room[row] += jump * jump;
    }
  }

  private static boolean stands(BlockTrace smoothed, int row) {
    return smoothed.shocks(row, OwnChoices.DEVIATIONS)
        && Math.abs(smoothed.shock(row))
            > OwnChoices.LEAST_CHANGE
                * Math.max(OwnChoices.LEAST_JUMP_RATIO, smoothed.mean(row, HeatState.RATIO));
  }

  private boolean isKnown(List<PreparedRow> rows, int row) {
    Integer low = found.floor(row);
    Integer high = found.ceiling(row);
    double time_s = rows.get(row).time_s();
    return (low != null && time_s - rows.get(low).time_s() < OwnChoices.REACH_S)
        || (high != null && rows.get(high).time_s() - time_s < OwnChoices.REACH_S);
  }
}
