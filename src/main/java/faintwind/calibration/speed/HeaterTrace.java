package faintwind.calibration.speed;

import faintwind.calibration.speed.RowJudge.Heater;
import java.util.ArrayList;
import java.util.List;

/**
 * What the filter believed of the heater over a block, and since when it must have been so: a
 * heater that was lost shows late in the heat balance, so rows before the discovery in which the
 * difference already fell as it does without heat are taken along. For one block.
 */
final class HeaterTrace {
  private static final double FALL_SHARE = 0.8;

  private final List<Heater> belief = new ArrayList<>();
  private final List<PreparedRow> rows = new ArrayList<>();
  private final List<Integer> discoveries = new ArrayList<>();

  void add(PreparedRow row, ForwardFilter filter) {
    boolean off = filter.heaterIsOff();
    boolean wasOff = !belief.isEmpty() && belief.get(belief.size() - 1) == Heater.OFF;
    if (off && !wasOff && row.supply() != PreparedRow.Supply.OFF) {
      discoveries.add(belief.size());
    }
    boolean regained = !off && wasOff;
    belief.add(off ? Heater.OFF : regained ? Heater.CHANGED : Heater.ON);
    rows.add(row);
  }

  Heater at(int index) {
    return belief.get(index);
  }

  /** Takes along the rows before each discovery in which the smoothed state falls unheated. */
  void lookBack(BlockTrace smoothed, FieldFormula formula) {
    StillLoss still = new StillLoss(formula);
    for (int discovery : discoveries) {
      int i = discovery - 1;
      while (i >= 0 && fallsUnheated(smoothed, i, still)) {
        belief.set(i, Heater.OFF);
        i--;
      }
    }
  }

  private boolean fallsUnheated(BlockTrace smoothed, int row, StillLoss still) {
    double delta_K = Math.max(1e-3, smoothed.mean(row, HeatState.DELTA));
    double still_1_s = still.at(delta_K, rows.get(row).air());
    double loss_1_s = still_1_s * smoothed.mean(row, HeatState.RATIO);
    double fall_1_s = loss_1_s - smoothed.mean(row, HeatState.FLOW) / delta_K;
    return fall_1_s > FALL_SHARE * still_1_s;
  }
}
