package faintwind.physics.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The closed list of quantities of a {@link DesignSheet}. Steps' {@code {values}} and the bands of
 * readings name them by {@link #id()}, which ends in the unit. The name in words is in the message
 * bundle under {@code quantity.ID}, the equation and its source under {@code quantity.ID.why}.
 */
public enum OutcomeId {
  // ---- air ----
  AIR_DENSITY("air_density_kg_m3", "kg/m³"),
  AIR_KINEMATIC_VISCOSITY("air_kinematic_viscosity_mm2_s", "mm²/s"),
  AIR_CONDUCTIVITY("air_conductivity_mW_mK", "mW/(m K)"),
  AIR_PRANDTL("air_prandtl", ""),
  // ---- the balls and their making ----
  BALL_DIAMETER("ball_diameter_mm", "mm"),
  BALL_AREA("ball_area_mm2", "mm²"),
  BORE("bore_mm", "mm"),
  HEATED_BORE_DEPTH("heated_bore_depth_mm", "mm"),
  REFERENCE_BORE_DEPTH("reference_bore_depth_mm", "mm"),
  BALL_MASS("ball_mass_g", "g"),
  BLANK_MASS_AGREEMENT("blank_mass_agreement_g", "g"),
  HEATED_BALL_MASS("heated_ball_mass_g", "g"),
  REFERENCE_BALL_MASS("reference_ball_mass_g", "g"),
  BORE_MASS_PER_MM("bore_mass_per_mm_g", "g"),
  BALL_HEAT_CAPACITY("ball_heat_capacity_J_K", "J/K"),
  DRILL_SPEED("drill_rpm", "1/min"),
  PECK_DEPTH("peck_depth_mm", "mm"),
  FLAT_DEPTH("flat_depth_mm", "mm"),
  HEATED_FROM_FLAT("heated_from_flat_mm", "mm"),
  REFERENCE_FROM_FLAT("reference_from_flat_mm", "mm"),
  HEATED_TRAVEL("heated_travel_mm", "mm"),
  REFERENCE_TRAVEL("reference_travel_mm", "mm"),
  HEATED_PECKS("heated_pecks", ""),
  REFERENCE_PECKS("reference_pecks", ""),
  BORE_NEEDED("bore_needed_mm", "mm"),
  BORE_CLEARANCE("bore_clearance_mm", "mm"),
  // ---- heater and supply ----
  HEATER_RESISTANCE("heater_ohm", "Ω"),
  HEATER_HOT("heater_hot_ohm", "Ω"),
  LEAD_LENGTH("lead_length_mm", "mm"),
  LEAD_TO_LEAD_LOW("lead_to_lead_low_ohm", "Ω"),
  LEAD_TO_LEAD_HIGH("lead_to_lead_high_ohm", "Ω"),
  HEATER_POWER("heater_power_W", "W"),
  HEATER_CURRENT("heater_current_mA", "mA"),
  HEATER_VOLTAGE("heater_voltage_V", "V"),
  HEATER_RATING("heater_rating_W", "W"),
  HEATER_RATING_DERATED("heater_rating_derated_W", "W"),
  RESISTOR_TEMPERATURE("resistor_C", "°C"),
  HEATER_FLUX("heater_flux_W_cm2", "W/cm²"),
  BALL_FLUX("ball_flux_W_m2", "W/m²"),
  SUPPLY_VOLTAGE("supply_V", "V"),
  SUPPLY_LOW("supply_low_V", "V"),
  SUPPLY_HIGH("supply_high_V", "V"),
  CURRENT_LOW("current_low_mA", "mA"),
  CURRENT_HIGH("current_high_mA", "mA"),
  FUSE("fuse_mA", "mA"),
  CABLE_RESISTANCE("cable_ohm", "Ω"),
  CABLE_DROP("cable_drop_V", "V"),
  BATTERY_FRESH("battery_fresh_V", "V"),
  BATTERY_CURRENT("battery_current_mA", "mA"),
  BATTERY_TIME("battery_h", "h"),
  // ---- heat ----
  STILL_DELTA("still_delta_K", "K"),
  DELTA_AT_1("delta_at_1_m_s_K", "K"),
  DELTA_AT_3("delta_at_3_m_s_K", "K"),
  HEATED_BALL_TEMPERATURE("heated_ball_C", "°C"),
  TOUCH_LIMIT("touch_limit_C", "°C"),
  WARM_UP_RATE("warm_up_rate_K_s", "K/s"),
  TIME_CONSTANT_STILL("time_constant_still_s", "s"),
  TIME_CONSTANT_AT_1("time_constant_at_1_m_s_s", "s"),
  TIME_CONSTANT_AT_3("time_constant_at_3_m_s_s", "s"),
  WARM_UP_TIME("warm_up_min", "min"),
  WARM_UP_FOLLOWED("warm_up_followed_min", "min"),
  COOL_DOWN_FOLLOWED("cool_down_followed_min", "min"),
  UNEQUAL_DRIFT("unequal_drift_K", "K"),
  LEAD_LOSS("lead_loss_mW_K", "mW/K"),
  LEAD_LOSS_SHARE("lead_loss_share_pct", "%"),
  BIOT("biot_number", ""),
  SUN_ABSORBED("sun_absorbed_mW", "mW"),
  SUN_SHARE("sun_share_pct", "%"),
  SUN_ONE_SHADED("sun_one_shaded_K", "K"),
  JAR_DELTA("jar_delta_K", "K"),
  JAR_AIR("jar_air_C", "°C"),
  JAR_SLOPE("jar_slope_K_K", "K/K"),
  JAR_PRESSURE("jar_pressure_hPa", "hPa"),
  JAR_PRESSURE_SLOPE("jar_slope_K_hPa", "K/hPa"),
  JAR_TIME("jar_min", "min"),
  // ---- signal ----
  SENSITIVITY("sensitivity_uV_K", "µV/K"),
  SIGNAL_STILL("signal_still_mV", "mV"),
  SIGNAL_AT_3("signal_at_3_m_s_mV", "mV"),
  RANGE_SHARE("range_share_pct", "%"),
  RESOLUTION_DELTA("resolution_K", "K"),
  RESOLUTION_AT_1("resolution_at_1_m_s_m_s", "m/s"),
  SMALLEST_SPEED("smallest_speed_m_s", "m/s"),
  ZERO_BAND("zero_band_mV", "mV"),
  LOOP_LENGTH("loop_length_mm", "mm"),
  BETWEEN_LENGTH("between_length_mm", "mm"),
  LOOP_RESISTANCE("loop_resistance_ohm", "Ω"),
  LOOP_RESISTANCE_LOW("loop_resistance_low_ohm", "Ω"),
  LOOP_RESISTANCE_HIGH("loop_resistance_high_ohm", "Ω"),
  INSULATION_GOOD("insulation_good_Mohm", "MΩ"),
  INSULATION_STOP("insulation_stop_Mohm", "MΩ"),
  CABLE_END_TO_END("cable_end_to_end_high_ohm", "Ω"),
  // ---- plating ----
  PLATING_NICKEL_CURRENT("plating_nickel_mA", "mA"),
  PLATING_NICKEL_TIME("plating_nickel_min", "min"),
  PLATING_GOLD_CURRENT("plating_gold_mA", "mA"),
  PLATING_GOLD_TIME("plating_gold_s", "s"),
  PLATING_CHARGE("plating_charge_C", "C"),
  PLATING_HYDROGEN("plating_hydrogen_mL", "mL"),
  PLATING_HYDROGEN_ROOM("plating_hydrogen_room_pct", "%"),
  // ---- the arm of the turntable ----
  ARM_RADIUS("arm_radius_mm", "mm"),
  ARM_FASTEST("arm_fastest_m_s", "m/s"),
  ARM_TURNS("arm_turns_1_min", "1/min"),
  ARM_PULL("arm_pull_N", "N"),
  ARM_PULL_GRAMS("arm_pull_g", "g"),
  ARM_THREAD_GROWTH("arm_thread_growth_mm", "mm"),
  ARM_HOLDER_GROWTH("arm_holder_growth_mm", "mm"),
  ARM_SAG("arm_sag_mm", "mm"),
  ARM_COUNTERWEIGHT("arm_counterweight_g", "g"),
  ARM_FOOT("arm_foot_kg", "kg"),
  ARM_DRAG("arm_drag_W", "W"),
  ARM_DRIVING_WEIGHT("arm_driving_weight_g", "g"),
  ARM_CLEAR("arm_clear_mm", "mm");

  private static final Map<String, OutcomeId> BY_ID =
      Arrays.stream(values()).collect(Collectors.toMap(OutcomeId::id, each -> each));

  private final String id;
  private final String unit;

  OutcomeId(String id, String unit) {
    this.id = id;
    this.unit = unit;
  }

  /** The name that data files use; ends in the unit. */
  public String id() {
    return id;
  }

  /** What the quantity belongs to. */
  public Group group() {
    if (compareTo(BALL_DIAMETER) < 0) {
      return Group.AIR;
    }
    if (compareTo(HEATER_RESISTANCE) < 0) {
      return Group.BALLS;
    }
    if (compareTo(STILL_DELTA) < 0) {
      return Group.HEATER;
    }
    if (compareTo(SENSITIVITY) < 0) {
      return Group.HEAT;
    }
    if (compareTo(PLATING_NICKEL_CURRENT) < 0) {
      return Group.SIGNAL;
    }
    return compareTo(ARM_RADIUS) < 0 ? Group.PLATING : Group.ARM;
  }

  /** Groups of quantities; the words are under {@code quantity-group.} */
  public enum Group {
    AIR,
    BALLS,
    HEATER,
    HEAT,
    SIGNAL,
    PLATING,
    ARM
  }

  /** Unit as it is written; empty for a pure number. */
  public String unit() {
    return unit;
  }

  /** The quantity of a name; empty where there is none. */
  public static Optional<OutcomeId> of(String id) {
    return Optional.ofNullable(BY_ID.get(id));
  }

  /** Every name. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(OutcomeId::id).toList();
  }
}
