package faintwind.calibration.speed.state;

import java.util.ArrayList;
import java.util.List;

/**
 * What the filter believed of the heater over a block, and since when it must have been so: a
 * heater that was lost shows late in the heat balance, so rows before the discovery in which the
 * difference already fell as it does without heat are taken along. For one block.
 */
public final class HeaterTrace {
  private final List<PreparedRow> rows;
  private final List<Heater> belief;
  private final List<Integer> discoveries = new ArrayList<>();

  /** Of these rows, which are added one by one. */
  HeaterTrace(List<PreparedRow> rows) {
    this.rows = rows;
    belief = new ArrayList<>(rows.size());
  }

  /** What is believed of the heater at a row. */
  public enum Heater {
    ON,
    OFF,
    /** Switched or lost in this very row. */
    CHANGED
  }

  /** Notes what the filter believes after the next row. */
  void add(ForwardFilter filter) {
    PreparedRow row = rows.get(belief.size());
    boolean off = filter.heaterIsOff();
    boolean wasOff = !belief.isEmpty() && belief.get(belief.size() - 1) == Heater.OFF;
    if (off && !wasOff && row.supply() != PreparedRow.Supply.OFF) {
      discoveries.add(belief.size());
    }
    boolean regained = !off && wasOff;
    belief.add(off ? Heater.OFF : regained ? Heater.CHANGED : Heater.ON);
  }

  /** What is believed at a row. */
  public Heater at(int index) {
    return belief.get(index);
  }

  /** Whether the heater is on, and is not found lost within minutes. */
  boolean isSurelyOn(int index) {
    double until_s = rows.get(index).time_s() + OwnChoices.DOUBT_S;
    for (int discovery : discoveries) {
      if (discovery >= index && rows.get(discovery).time_s() < until_s) {
        return false;
      }
    }
    return belief.get(index) == Heater.ON;
  }

  /** Takes along the rows before each discovery in which the smoothed state falls unheated. */
  void lookBack(BlockTrace smoothed, FieldFormula formula) {
    for (int discovery : discoveries) {
      int end = discovery;
      int i = discovery - 1;
      while (i >= 0) {
        while (rows.get(end).time_s() > rows.get(i).time_s() + OwnChoices.TRACED_WINDOW_S
            && end > i + 3) {
          end--;
        }
        boolean near =
            rows.get(discovery).time_s() < rows.get(i).time_s() + OwnChoices.TRACED_WINDOW_S;
        if (!near && !fallsUnheated(smoothed, i, end, formula)) {
          break;
        }
        belief.set(i, Heater.OFF);
        i--;
      }
    }
  }

  /** Whether Δ falls from a row to a later one as still air without heat lets it, or faster. */
  private boolean fallsUnheated(BlockTrace smoothed, int row, int later, FieldFormula formula) {
    double delta_K = Math.max(OwnChoices.LEAST_DELTA_K, smoothed.mean(row, HeatState.DELTA));
    double laterDelta_K = Math.max(OwnChoices.LEAST_DELTA_K, smoothed.mean(later, HeatState.DELTA));
    if (delta_K <= OwnChoices.NOTHING_K) {
      return true;
    }
    double still_1_s = formula.stillLoss_1_s(delta_K, rows.get(row).air());
    double duration_s = rows.get(later).time_s() - rows.get(row).time_s();
    return Math.log(delta_K / laterDelta_K) > OwnChoices.TRACED_FALL * still_1_s * duration_s;
  }
}
