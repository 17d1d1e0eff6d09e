package faintwind.physics.arm;

import faintwind.physics.Constants;

/**
 * What the air takes from a turning arm: ½·ρ·C_d·v² on each piece of its length (definition of the
 * drag coefficient). With v = ω·x along a bar of width w: torque ½·ρ·C_d·w·ω²·R⁴/4, power torque·ω.
 *
 * @param airDensity_kg_m3 density of the air, kg/m³
 * @param width_m of the bar as the air sees it, m
 */
public record ArmDrag(double airDensity_kg_m3, double width_m) {
  /**
   * Drag coefficient of a long square bar, broad side on: about 2 (Hoerner, Fluid-Dynamic Drag,
   * 1965, from memory).
   */
  static final double BAR = 2.0;

  /** Drag coefficient taken for pair, holder and wires: 1.2, as a rod across the air (the same). */
  static final double HELD = 1.2;

  /**
   * Torque at the hub, N·m: a bar to both sides and what it carries at the tip.
   *
   * @param tip the end of the bar
   * @param held_m2 area of what is carried, as the air sees it, m²
   */
  public double torque_Nm(Turning tip, double held_m2) {
    double omega = tip.omega_rad_s();
    double half = 0.5 * airDensity_kg_m3;
    double bar = half * BAR * width_m * omega * omega * Math.pow(tip.radius_m(), 4) / 4;
    double held = half * HELD * held_m2 * tip.speed_m_s() * tip.speed_m_s() * tip.radius_m();
    return 2 * bar + held;
  }

  /** Power that keeps it turning, W: torque · ω, without the friction of the bearing. */
  public double power_W(Turning tip, double held_m2) {
    return torque_Nm(tip, held_m2) * tip.omega_rad_s();
  }

  /**
   * Weight on a cord round a drum that keeps it turning, kg: torque/(g·drum radius).
   *
   * @param drum_m radius of the drum, m
   */
  public double drivingWeight_kg(Turning tip, double held_m2, double drum_m) {
    return torque_Nm(tip, held_m2) / (Constants.GRAVITY_M_S2 * drum_m);
  }
}
