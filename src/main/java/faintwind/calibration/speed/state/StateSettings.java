package faintwind.calibration.speed.state;

import java.util.LinkedHashMap;
import java.util.Map;

/** The settings of the filter of one log, by the names of the calibration file. */
public final class StateSettings {
  private StateSettings() {}

  /** All of them, in the file's order. */
  public static Map<String, Double> all() {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put("least_lag_s", StateStep.LEAST_LAG_S);
    all.put("longest_step_s", HeatState.LONGEST_STEP_S);
    all.put("series_terms", (double) StateStep.TERMS);
    all.put("model_noise_K2_s", HeatState.MODEL_NOISE_K2_S);
    all.put("least_ratio", StateStep.LEAST_RATIO);
    all.put("greatest_ratio", HeatState.GREATEST_RATIO);
    all.put("first_ratio", OwnChoices.FIRST_RATIO);
    all.put("first_ratio_variance", OwnChoices.FIRST_RATIO_VARIANCE);
    all.put("first_delta_variance_K2", OwnChoices.FIRST_DELTA_VARIANCE_K2);
    all.put("first_flow_share", OwnChoices.FIRST_FLOW_SHARE);
    all.put("switched_ratio_variance", OwnChoices.SWITCHED_RATIO_VARIANCE);
    all.put("switched_flow_share", OwnChoices.SWITCHED_FLOW_SHARE);
    all.put("resume_share", ForwardFilter.RESUME_SHARE);
    all.put("noise_rows", (double) RecentNoise.ROWS);
    all.put("noise_every", (double) RecentNoise.BETWEEN);
    all.put("noise_fewest", (double) NoiseLevel.FEWEST);
    all.put("noise_median_factor", NoiseLevel.MEDIAN_TO_DEVIATION);
    all.put("noise_trust", NoiseLevel.TRUST);
    all.put("noise_least_share", NoiseLevel.LEAST_SHARE);
    all.put("step_rows", (double) UsualStep.LOOK_BACK);
    all.put("step_needed", (double) UsualStep.NEEDED);
    return all;
  }
}
