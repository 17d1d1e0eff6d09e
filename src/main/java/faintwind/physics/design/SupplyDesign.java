package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Wire;
import java.util.Optional;

/**
 * What feeds the heater.
 *
 * @param voltage_V voltage at the supply with its tolerance, V
 * @param regulator what holds it
 * @param cable cable to the balls, where there is one
 * @param battery battery, where there is one
 */
public record SupplyDesign(
    Interval voltage_V, Regulator regulator, Optional<Cable> cable, Optional<BatteryType> battery) {

  /** How the voltage is held. */
  public enum Kind {
    /** Burns off what is too much: battery current = load + its own. */
    LINEAR,
    /** Converts: battery current = load power/(efficiency · battery voltage). */
    SWITCHING,
    /** A mains adapter or a port: no battery to reckon with. */
    MAINS
  }

  /**
   * The regulator.
   *
   * @param kind how it works
   * @param dropout_V least voltage between input and output, V
   * @param own_A current it takes for itself, A
   * @param efficiency of a switching one, 0 to 1
   */
  public record Regulator(Kind kind, double dropout_V, double own_A, double efficiency) {}

  /**
   * A cable; the current goes out and back.
   *
   * @param conductor one of its conductors
   * @param length_m length from supply to balls, m
   */
  public record Cable(Wire conductor, double length_m) {
    /** Resistance of both conductors, Ω. */
    public Interval loop_ohm() {
      return conductor.resistance_ohm_m().times(2 * length_m);
    }
  }

  /** Least voltage that the regulator needs at its input, V. */
  public double needed_V() {
    return voltage_V.nominal() + regulator.dropout_V();
  }
}
