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
 * @param leadLoss_W_K conductance of the leads, W/K
 * @param arm what earlier calibrations showed of the arm
 */
public record BuildFacts(
    Optional<Uncertain> diameter_m,
    Optional<Uncertain> heatedMass_kg,
    Optional<Uncertain> specificHeat_J_kgK,
    Optional<Uncertain> heater_ohm,
    Optional<Uncertain> supply_V,
    Optional<Uncertain> leadLoss_W_K,
    Optional<ArmKnown> arm) {

  /** Nothing is on record. */
  public static final BuildFacts NONE =
      new BuildFacts(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** The same with the arm known. */
  public BuildFacts withArm(ArmKnown known) {
    return new BuildFacts(
        diameter_m,
        heatedMass_kg,
        specificHeat_J_kgK,
        heater_ohm,
        supply_V,
        leadLoss_W_K,
        Optional.of(known));
  }
}
