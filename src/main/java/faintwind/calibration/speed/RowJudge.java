package faintwind.calibration.speed;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.QuickCurve;
import faintwind.calibration.speed.EstimatedRow.Estimate;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.HeatState;
import faintwind.calibration.speed.state.HeaterLimits;
import faintwind.calibration.speed.state.HeaterTrace.Heater;
import faintwind.calibration.speed.state.NoiseLevel;
import faintwind.calibration.speed.state.PreparedRow;
import faintwind.calibration.speed.state.WindJumps;

/**
 * Makes an {@link EstimatedRow} of a state and flags what the state and the record show. For one
 * log and one thread.
 */
final class RowJudge {
  private final FieldFormula formula;
  private final double warm_K;
  private final ErrorMemory memory;
  private final QuickCurve logarithm = new QuickCurve(Math::log);
  private final double[] points = new double[3];
  private EstimatedRow.Place place = new EstimatedRow.Place(0, false);
  private double hidden;
  private double remembered = 1;
  private boolean settled;
  private double begun_s;
  private boolean afterGap;
  private double varianceBeforeGap = 1;
  private double lastVariance = 1;

  RowJudge(FieldFormula formula, HeaterLimits limits, ErrorMemory memory) {
    this.formula = formula;
    this.memory = memory;
    warm_K = OwnChoices.WARM_SHARE * limits.stillDelta_K();
  }

  /** How well the rows from now on are read. */
  void reads(NoiseLevel level) {
    hidden = level.hidden();
    remembered = level.coarse() ? OwnChoices.COARSE_MEMORY : 1;
  }

  /** Where the next row lies among sudden changes of the wind. */
  void place(WindJumps jumps, int row) {
    boolean within = jumps.isWithin(row);
    if (within || place.withinChange()) {
      int segment = place.segment() + (jumps.startsAt(row) ? 1 : 0);
      place = new EstimatedRow.Place(segment, within);
    }
  }

  /**
   * The row with its speed and flags.
   *
   * @param mean state of the row
   * @param variance of ln(loss)
   * @param walk2_1_s variance of its walk per second
   * @param heater what is believed of the heater
   */
  EstimatedRow judge(
      PreparedRow row, double[] mean, double variance, double walk2_1_s, Heater heater) {
    double delta_K = mean[HeatState.DELTA];
    double shown_K = Math.min(delta_K, mean[HeatState.BEAD]);
    double least_K = delta_K < OwnChoices.LEAST_SHOWN_K ? OwnChoices.LEAST_SHOWN_K : delta_K;
    double still_1_s = formula.stillLoss_1_s(least_K, row.air());
    double ratio = within(0.3, mean[HeatState.RATIO], 50);
    double lost = still_1_s * ratio * least_K;
    Estimate estimate =
        new Estimate(
            least_K,
            still_1_s,
            logarithm.at(ratio),
            variance,
            Math.min(
                OwnChoices.LONGEST_MEMORY_S, remembered * memory.memory_s(variance, walk2_1_s)),
            within(0, mean[HeatState.FLOW] / lost, 3),
            formula.relative(hidden, least_K, row.air().air_K()));
    double speed_m_s = speed_m_s(still_1_s * ratio, estimate, row.air());
    int flags = flags(row, shown_K, variance, heater);
    return new EstimatedRow(row, estimate, speed_m_s, flags, place);
  }

  /**
   * Mean speed over what the loss may be: the loss is told well on the mean, and where gusts are
   * quicker than the estimator the bend of the formula lets the mean speed lie above that of the
   * mean loss. Gauss–Hermite rule of three points; near still air, where the bend is no longer that
   * of moving air, the speed of the mean loss.
   */
  private double speed_m_s(double loss, Estimate estimate, AirPoint air) {
    double delta_K = estimate.delta_K();
    double away = Math.sqrt(3 * estimate.variance());
    if (estimate.variance() < OwnChoices.LEAST_BEND_VARIANCE
        || estimate.logLoss() < OwnChoices.STILL_AWAY * away) {
      return formula.speed_m_s(loss, delta_K, air);
    }
    points[0] = loss * Math.max(0, 1 - away);
    points[1] = loss;
    points[2] = loss * (1 + away);
    formula.speeds_m_s(points, delta_K, air);
    return points[1] + (points[0] - 2 * points[1] + points[2]) / 6;
  }

  /** Asked for every row: the library's own takes a call each. */
  private static double within(double least, double x, double greatest) {
    return x <= least ? least : x > greatest ? greatest : x;
  }

  private int flags(PreparedRow row, double delta_K, double variance, Heater heater) {
    int flags = 0;
    if (begins(row) || heater != Heater.ON) {
      settled = false;
      begun_s = row.time_s();
    }
    settled |=
        variance < OwnChoices.SETTLED_VARIANCE
            || row.time_s() > begun_s + OwnChoices.SURELY_SETTLED_S;
    if (!settled || delta_K < warm_K) {
      flags |= SpeedFlag.WARMUP.bit();
    }
    // in the row of the change a supply that is recorded and good has the last word
    boolean changed = heater == Heater.CHANGED && row.supply() == PreparedRow.Supply.NOT_RECORDED;
    if (heater == Heater.OFF || changed || row.supply() == PreparedRow.Supply.OUT) {
      flags |= SpeedFlag.POWER.bit();
    }
    if (isAfterGap(row, variance)) {
      flags |= SpeedFlag.GAP.bit();
    }
    lastVariance = variance;
    return flags;
  }

  private boolean isAfterGap(PreparedRow row, double variance) {
    boolean gap =
        row.kind() == PreparedRow.Kind.AFTER_GAP || row.kind() == PreparedRow.Kind.AFTER_LONG_GAP;
    if (gap && !afterGap) {
      varianceBeforeGap = lastVariance;
    }
    afterGap = gap || (afterGap && variance > OwnChoices.GAP_VARIANCE_RATIO * varianceBeforeGap);
    return afterGap;
  }

  private static boolean begins(PreparedRow row) {
    return row.kind() == PreparedRow.Kind.FIRST || row.kind() == PreparedRow.Kind.AFTER_LONG_GAP;
  }
}
