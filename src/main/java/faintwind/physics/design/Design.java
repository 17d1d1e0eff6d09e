package faintwind.physics.design;

import faintwind.physics.AirState;
import faintwind.physics.sheet.DesignSheet;

/**
 * An instrument as decided, before anything is bought. {@link DesignRules} says what contradicts
 * itself; {@link DesignSheet#of} what follows.
 *
 * @param name what the builder calls it
 * @param ball the two balls
 * @param heater the heater
 * @param supply what feeds it
 * @param sense thermocouple and logger
 * @param air the air it will stand in
 * @param use what it is for
 */
public record Design(
    String name,
    BallDesign ball,
    HeaterDesign heater,
    SupplyDesign supply,
    SenseDesign sense,
    AirState air,
    Use use) {

  /** The same under another name. */
  public Design named(String other) {
    return new Design(other, ball, heater, supply, sense, air, use);
  }

  /** The same with other balls. */
  public Design with(BallDesign other) {
    return new Design(name, other, heater, supply, sense, air, use);
  }

  /** The same with another heater. */
  public Design with(HeaterDesign other) {
    return new Design(name, ball, other, supply, sense, air, use);
  }

  /** The same with another thermocouple or logger. */
  public Design with(SenseDesign other) {
    return new Design(name, ball, heater, supply, other, air, use);
  }
}
