package faintwind.physics.arm;

import faintwind.physics.Constants;

/**
 * An arm of the kind that the steps build, at its fastest: a wooden bar on a stand, and on it a
 * pair on a stiff upright holder. Its sizes are common practice without a source.
 *
 * @param tip radius to the heated ball and fastest speed there
 */
public record PlannedArm(Turning tip) {
  /** Pair, holder and wires at the tip, kg. */
  public static final double HELD_KG = 0.1;

  /** What the air sees of them, m². */
  static final double HELD_M2 = 2e-3;

  /** Side of the square bar, m. */
  static final double BAR_M = 0.02;

  /** Height of the holder above the bar, and its round rod, m. */
  static final double HOLDER_M = 0.1;

  static final double ROD_M = 0.008;

  /** From the axis to the counterweight as a share of the radius. */
  static final double COUNTER_SHARE = 0.5;

  /** A thread such as people hang things on, m. */
  static final double THREAD_M = 0.06;

  /** Foot and height of the stand, m. */
  static final double FOOT_M = 0.25;

  static final double STAND_M = 0.5;

  /** How far from the tip the floor stays clear, m. */
  static final double CLEAR_M = 0.5;

  private static final double TURN_A_SECOND = 1;
  private static final double LEAST_M = 0.4;
  private static final double MOST_M = 1.5;
  private static final double STEP_M = 0.05;

  /**
   * The shortest arm that reaches a speed with a turn a second, which a hand can still follow by
   * the beat: r = v/(2π·1 s⁻¹), between 0.4 and 1.5 m, rounded up to 50 mm (common practice, no
   * source).
   *
   * @param fastest_m_s the fastest wanted speed, m/s
   */
  public static PlannedArm forSpeed(double fastest_m_s) {
    double radius = fastest_m_s / (2 * Math.PI * TURN_A_SECOND);
    double rounded = STEP_M * Math.ceil(radius / STEP_M - 1e-9);
    double within = Math.min(MOST_M, Math.max(LEAST_M, rounded));
    return new PlannedArm(new Turning(within, fastest_m_s));
  }

  /** Outward pull on the holder, N. */
  public double pull_N() {
    return tip.pull_N(HELD_KG);
  }

  /** By how much the radius would grow if the pair hung on a thread of 60 mm, m. */
  public double threadGrowth_m() {
    return ThreadSwing.growth_m(tip, THREAD_M);
  }

  /** By how much the stiff holder bends outwards, m. */
  public double holderGrowth_m() {
    return new Beam(HOLDER_M, Beam.SOFTWOOD_PA, Beam.round_m4(ROD_M)).tipDeflection_m(pull_N());
  }

  /** Sag of the bar at the pair, m: its own weight and what it carries. */
  public double sag_m() {
    Beam bar = new Beam(tip.radius_m(), Beam.SOFTWOOD_PA, Beam.rectangle_m4(BAR_M, BAR_M));
    double own = Beam.SOFTWOOD_KG_M3 * BAR_M * BAR_M * Constants.GRAVITY_M_S2;
    return bar.evenDeflection_m(own) + bar.tipDeflection_m(HELD_KG * Constants.GRAVITY_M_S2);
  }

  /** Counterweight at half the radius, beyond the bar's own balance, kg. */
  public double counterweight_kg() {
    return HELD_KG / COUNTER_SHARE;
  }

  /**
   * What the foot must weigh, kg: twice what just does not tip when the counterweight comes off.
   */
  public double foot_kg() {
    return 2 * new Stand(FOOT_M, STAND_M).leastFoot_kg(tip, HELD_KG);
  }

  /**
   * Power of the drag, W; a drive has some times as much, for the bearing and the start.
   *
   * @param airDensity_kg_m3 density of the air, kg/m³
   */
  public double drag_W(double airDensity_kg_m3) {
    return new ArmDrag(airDensity_kg_m3, BAR_M).power_W(tip, HELD_M2);
  }

  /**
   * Weight on a cord round a drum of 20 mm radius that makes up for the drag, kg.
   *
   * @param airDensity_kg_m3 density of the air, kg/m³
   */
  public double drivingWeight_kg(double airDensity_kg_m3) {
    return new ArmDrag(airDensity_kg_m3, BAR_M).drivingWeight_kg(tip, HELD_M2, 0.02);
  }

  /** Radius of the floor that stays clear, m. */
  public double clear_m() {
    return tip.radius_m() + CLEAR_M;
  }
}
