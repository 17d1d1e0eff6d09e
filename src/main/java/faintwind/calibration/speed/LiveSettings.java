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
    all.put("first_walk", (double) OwnChoices.FIRST_WALK);
    all.put("switch_margin", OwnChoices.SWITCH_MARGIN);
    all.put("score_memory_s", OwnChoices.SCORE_MEMORY_S);
    all.put("score_clip", OwnChoices.SCORE_CLIP2);
    all.put("score_after_rows", (double) OwnChoices.SCORE_AFTER_ROWS);
    all.put("drift_keep", OwnChoices.DRIFT_KEEP);
    all.put("drift_sure", OwnChoices.SURE_JUMP);
    all.put("jump_share", OwnChoices.JUMP_SHARE);
    all.put("jump_cost", OwnChoices.JUMP_COST);
    all.put("usual_clip", OwnChoices.USUAL_CLIP2);
    all.put("usual_rows", OwnChoices.USUAL_ROWS);
    all.putAll(StateSettings.all());
    rows(all);
    surroundings(all);
    return all;
  }

  private static void rows(Map<String, Double> all) {
    all.put("gap_steps", OwnChoices.GAP_STEPS);
    all.put("least_gap_s", OwnChoices.LEAST_GAP_S);
    all.put("long_gap_s", OwnChoices.LONG_GAP_S);
    all.put("spike_allowance", OwnChoices.SPIKE_ALLOWANCE);
    all.put("spike_noises", OwnChoices.SPIKE_NOISES);
    all.put("spikes_in_a_row", (double) OwnChoices.SPIKES_IN_A_ROW);
    all.put("warm_share", OwnChoices.WARM_SHARE);
    all.put("settled_variance", OwnChoices.SETTLED_VARIANCE);
    all.put("surely_settled_s", OwnChoices.SURELY_SETTLED_S);
    all.put("gap_variance_ratio", OwnChoices.GAP_VARIANCE_RATIO);
    all.put("least_shown_K", OwnChoices.LEAST_SHOWN_K);
    all.put("least_bend_variance", OwnChoices.LEAST_BEND_VARIANCE);
    all.put("still_away", OwnChoices.STILL_AWAY);
  }

  private static void surroundings(Map<String, Double> all) {
    all.put("air_smoothing_s", OwnChoices.AIR_SMOOTHING_S);
    all.put("air_jump_K", OwnChoices.AIR_JUMP_K);
    all.put("air_jump_stands_s", OwnChoices.AIR_JUMP_STANDS_S);
    all.put("supply_smoothing_s", OwnChoices.SUPPLY_SMOOTHING_S);
    all.put("supply_jump_share", OwnChoices.SUPPLY_JUMP_SHARE);
    all.put("supply_off_share", OwnChoices.SUPPLY_OFF_SHARE);
    all.put("supply_off_V", OwnChoices.SUPPLY_OFF_V);
    all.put("supply_tolerance", OwnChoices.SUPPLY_TOLERANCE);
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
    all.put("u_heating_unseen", OwnChoices.U_HEATING_UNSEEN);
    all.put("u_air_unrecorded_K", OwnChoices.U_AIR_UNRECORDED_K);
    all.put("u_pressure_unrecorded", OwnChoices.U_PRESSURE_UNRECORDED);
    all.put("nearly_straight", OwnChoices.NEARLY_STRAIGHT);
    all.put("direction_share", OwnChoices.DIRECTION_U95);
    all.put("direction_from", OwnChoices.MIXED);
    all.put("still_draught_m_s", stillDraught_m_s);
    all.put("least_slope_speed_m_s", FieldFormula.LEAST_SPEED_M_S);
    return all;
  }
}
