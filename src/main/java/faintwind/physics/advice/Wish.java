package faintwind.physics.advice;

import faintwind.physics.AirState;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.design.Use;
import faintwind.physics.part.LoggerProfile;

/**
 * What a person wants an instrument to do, before there is a design.
 *
 * @param use place, contact, speeds
 * @param response_s time constant wanted at 1 m/s, s
 * @param atHand what is on hand
 * @param air the air it will stand in
 * @param spend how much may be spent on the surface
 */
public record Wish(Use use, double response_s, AtHand atHand, AirState air, Spend spend) {

  /**
   * What is on hand already.
   *
   * @param logger what reads the thermocouple
   * @param gain amplifier gain before it
   * @param averaging_s time over which readings are averaged, s
   * @param supply what will feed the heater
   */
  public record AtHand(
      LoggerProfile logger, double gain, double averaging_s, SupplyDesign supply) {}

  /** How much may be spent. */
  public enum Spend {
    /** No plating. */
    LITTLE,
    /** A plater may be paid. */
    SOME
  }
}
