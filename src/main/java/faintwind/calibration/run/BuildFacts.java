package faintwind.calibration.run;

import java.util.Optional;

/**
 * What the build record knows of the balls, as measured or bought; used for prior knowledge only,
 * never as a result.
 *
 * @param diameter_m ball diameter, m
 * @param heatedMass_kg mass of the drilled heated ball, kg
 * @param specificHeat_J_kgK of its metal, J/(kg K)
 * @param heater_ohm heater resistance, Ω
 * @param supply_V heater supply at the ball, V
 * @param emissivity of its surface, 0 to 1
 * @param wires what leaves the ball
 */
public record BuildFacts(
    Optional<Uncertain> diameter_m,
    Optional<Uncertain> heatedMass_kg,
    Optional<Uncertain> specificHeat_J_kgK,
    Optional<Uncertain> heater_ohm,
    Optional<Uncertain> supply_V,
    Optional<Uncertain> emissivity,
    Wires wires) {

  /**
   * What the wires are known to do.
   *
   * @param leadLoss_W_K conductance of the leads, W/K
   * @param signal_V_K voltage at the logger for a kelvin between the junctions, V/K
   */
  public record Wires(Optional<Uncertain> leadLoss_W_K, Optional<Uncertain> signal_V_K) {
    /** Nothing is on record. */
    public static final Wires NOT_KNOWN = new Wires(Optional.empty(), Optional.empty());
  }
}
