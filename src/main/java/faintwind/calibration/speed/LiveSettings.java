package faintwind.calibration.speed;

import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.StateSettings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/** The settings of the estimator for a live stream, by the names of the calibration file. */
public final class LiveSettings {
  private LiveSettings() {}

  /** The strengths of the walk, each with a filter of its own. */
  public static List<Double> walks_1_sqrt_s() {
    return DoubleStream.of(FilteredSpeed.STRENGTH).boxed().toList();
  }

  /** All others, in the file's order. */
  public static Map<String, Double> all() {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put("first_walk", (double) FilteredSpeed.FIRST_CHOICE);
    all.put("switch_margin", FilteredSpeed.SWITCH_MARGIN);
    all.put("score_memory_s", FilteredSpeed.MEMORY_S);
    all.put("score_clip", FilteredSpeed.CLIP2);
    all.put("score_after_rows", (double) FilteredSpeed.SETTLING_ROWS);
    all.put("drift_keep", FilteredSpeed.KEEP);
    all.put("drift_sure", FilteredSpeed.SURE_JUMP);
    all.put("jump_share", FilteredSpeed.JUMP_SHARE);
    all.put("jump_cost", FilteredSpeed.JUMP_COST);
    all.put("usual_clip", FilteredSpeed.WILD2);
    all.put("usual_rows", FilteredSpeed.USUAL_ROWS);
    all.putAll(StateSettings.all());
    rows(all);
    surroundings(all);
    return all;
  }

  private static void rows(Map<String, Double> all) {
    all.put("gap_steps", LogPreparation.GAP_STEPS);
    all.put("least_gap_s", LogPreparation.LEAST_GAP_S);
    all.put("long_gap_s", LogPreparation.LONG_GAP_S);
    all.put("spike_allowance", LogPreparation.SPIKE_ALLOWANCE);
    all.put("spike_noises", LogPreparation.NOISE_MARGIN);
    all.put("spikes_in_a_row", (double) LogPreparation.SPIKES_IN_A_ROW);
    all.put("warm_share", RowJudge.WARM_SHARE);
    all.put("settled_variance", RowJudge.SETTLED_VARIANCE);
    all.put("surely_settled_s", RowJudge.SURELY_SETTLED_S);
    all.put("gap_variance_ratio", RowJudge.GAP_VARIANCE_RATIO);
    all.put("least_shown_K", RowJudge.LEAST_DELTA_K);
    all.put("least_bend_variance", RowJudge.LEAST_BEND_VARIANCE);
    all.put("still_away", RowJudge.STILL_AWAY);
  }

  private static void surroundings(Map<String, Double> all) {
    all.put("air_smoothing_s", FieldAir.SMOOTHING_S);
    all.put("air_jump_K", FieldAir.JUMP_K);
    all.put("air_jump_stands_s", FieldAir.JUMP_STANDS_S);
    all.put("supply_smoothing_s", FieldSupply.SMOOTHING_S);
    all.put("supply_jump_share", FieldSupply.JUMP_SHARE);
    all.put("supply_off_share", FieldSupply.OFF_SHARE);
    all.put("supply_off_V", FieldSupply.UNKNOWN_OFF_V);
    all.put("supply_tolerance", FieldSupply.TOLERANCE);
  }

  /**
   * What the expanded uncertainty of a speed is made of besides the covariance.
   *
   * @param stillDraught_m_s draught of the calibration's room
   */
  public static Map<String, Double> uncertainty(double stillDraught_m_s) {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put("coverage_factor", SpeedUncertainty.COVERAGE_FACTOR);
    all.put("u_still", SpeedUncertainty.U_STILL);
    all.put("u_heating_unseen", SpeedUncertainty.U_HEATING_UNSEEN);
    all.put("u_air_unrecorded_K", FieldAir.U_UNRECORDED_K);
    all.put("u_pressure_unrecorded", FieldAir.U_UNRECORDED_PRESSURE);
    all.put("nearly_straight", SpeedUncertainty.NEARLY_STRAIGHT);
    all.put("direction_share", SpeedUncertainty.DIRECTION_U95);
    all.put("direction_from", SpeedUncertainty.MIXED);
    all.put("still_draught_m_s", stillDraught_m_s);
    all.put("least_slope_speed_m_s", FieldFormula.LEAST_SPEED_M_S);
    return all;
  }
}
