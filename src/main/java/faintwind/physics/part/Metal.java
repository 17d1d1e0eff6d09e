package faintwind.physics.part;

import faintwind.physics.Interval;

/**
 * A metal for the balls.
 *
 * @param label id, name, source
 * @param density_kg_m3 density, kg/m³
 * @param specificHeat_J_kgK specific heat near 300 K, J/(kg K)
 * @param conductivity_W_mK thermal conductivity near 300 K, W/(m K)
 * @param cutting_m_s cutting speed for a high-speed-steel drill, m/s
 * @param firstBath what a deposit of nickel or gold needs first
 */
public record Metal(
    Label label,
    Interval density_kg_m3,
    Interval specificHeat_J_kgK,
    Interval conductivity_W_mK,
    Interval cutting_m_s,
    FirstBath firstBath) {

  /** What comes before nickel. */
  public enum FirstBath {
    /** Nickel takes to the clean metal. */
    NICKEL,
    /** The oxide must be exchanged for zinc first: work for a licensed plater. */
    ZINCATE,
    /** It is not plated. */
    NONE
  }

  /**
   * Speed of a drill, 1/s turns: n = v/(π·d) (definition of cutting speed).
   *
   * @param drill_m drill diameter, m
   */
  public Interval drillTurns_1_s(double drill_m) {
    return cutting_m_s.times(1 / (Math.PI * drill_m));
  }
}
