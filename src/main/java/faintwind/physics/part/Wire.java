package faintwind.physics.part;

import faintwind.physics.Interval;
import faintwind.physics.LeadWire;

/**
 * A wire with one conductor, or one of several alike in a cable.
 *
 * @param label id, name, source
 * @param core_m diameter of its conductor, m; of the solid round of the same area where stranded
 * @param outer_m diameter over its covering, m
 * @param resistance_ohm_m resistance of one conductor at 20 °C, Ω/m
 * @param conductivity_W_mK thermal conductivity of the conductor, W/(m K)
 * @param tempco_1_K temperature coefficient of the resistance, 1/K
 */
public record Wire(
    Label label,
    double core_m,
    double outer_m,
    Interval resistance_ohm_m,
    double conductivity_W_mK,
    double tempco_1_K) {

  /** The wire as a fin of a free length, m. */
  public LeadWire lead(double length_m) {
    return new LeadWire(core_m, outer_m, length_m, conductivity_W_mK);
  }

  /**
   * Diameter of a solid conductor by its gauge number, m: 0.127 mm·92^((36 − n)/39) (ASTM B258).
   */
  public static double gauge_m(int awg) {
    return 0.127e-3 * Math.pow(92, (36 - awg) / 39.0);
  }
}
