package faintwind.calibration.speed;

import faintwind.calibration.speed.state.PreparedRow;
import java.util.List;
import java.util.Optional;

/**
 * How long a block of smoothing is. The stretch beyond it must be long against the smoother's
 * memory; where the supply is not recorded, also long enough for a heater that was lost to show.
 *
 * @param fewestRows of a block
 * @param mostRows of a block
 * @param span_s least time of a block
 * @param beyond_s time beyond it
 * @param beyondWithoutSupply_s the same where the supply is not recorded
 */
record SmoothingBlock(
    int fewestRows, int mostRows, double span_s, double beyond_s, double beyondWithoutSupply_s) {
  private static final int MOST_BEYOND = 20_000;
  private static final int FEWEST_BEYOND = 40;

  static final SmoothingBlock USUAL = new SmoothingBlock(2000, 40_000, 1500, 300, 1200);

  /** Rows that can be handed on now; 0 to wait for more. */
  int core(List<Optional<PreparedRow>> rows, boolean supplyRecorded) {
    int size = rows.size();
    if (size < fewestRows + FEWEST_BEYOND || size % FEWEST_BEYOND != 0) {
      return 0;
    }
    double wait_s = supplyRecorded ? beyond_s : beyondWithoutSupply_s;
    Optional<PreparedRow> first =
        rows.get(0).isPresent() ? rows.get(0) : rows.stream().flatMap(Optional::stream).findFirst();
    Optional<PreparedRow> last = rows.get(size - 1);
    if (first.isEmpty() || size >= mostRows + MOST_BEYOND) {
      return Math.min(size, mostRows);
    }
    if (last.isEmpty() || last.get().time_s() - first.get().time_s() < span_s + wait_s) {
      return 0;
    }
    return split(rows, last.get().time_s() - wait_s);
  }

  private int split(List<Optional<PreparedRow>> rows, double end_s) {
    if (isAfter(rows.get(fewestRows), end_s)) {
      return 0;
    }
    int core = rows.size() - FEWEST_BEYOND;
    while (core > 0 && (rows.get(core).isEmpty() || isAfter(rows.get(core), end_s))) {
      core--;
    }
    return core < fewestRows ? 0 : core;
  }

  private static boolean isAfter(Optional<PreparedRow> row, double end_s) {
    return row.isPresent() && row.get().time_s() > end_s;
  }
}
