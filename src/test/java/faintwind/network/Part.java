package faintwind.network;

/** Every resistance of the assembly that can be sound or faulty. */
enum Part {
  /** The resistor on the bench, before anything was done to it. */
  HEATER_ALONE,
  /** The resistor with its thin leads, before it is coated. */
  HEATER_WITH_LEADS,
  HEATER,
  /** The loop before it is glued in. */
  LOOP_ALONE,
  /** Lead to lead past the resistor: metal-filled epoxy. */
  LEADS_BRIDGE,
  LEAD_A_TO_BALL,
  LEAD_B_TO_BALL,
  /** The middle of the resistor's body to the ball. */
  BODY_TO_BALL,
  LEAD_A_TO_PLATE,
  LEAD_B_TO_PLATE,
  /** Body, joints and bent leg to the plate, at the middle of the resistor. */
  BODY_TO_PLATE,
  JUNCTION_1_TO_PLATE,
  JUNCTION_2_TO_PLATE,
  /** From the plus end to junction 1. */
  LEG_1,
  /** From junction to junction. */
  MIDDLE,
  /** From junction 2 to the minus end. */
  LEG_2,
  JUNCTION_1_TO_BALL,
  JUNCTION_2_TO_BALL,
  /** Heater lead A to the thermocouple, not by way of the ball. */
  HEATER_TO_LOOP,
  /** Ball to ball by the frame. */
  FRAME,
  CONDUCTOR_HEATER_PLUS,
  CONDUCTOR_HEATER_MINUS,
  CONDUCTOR_SIGNAL_PLUS,
  CONDUCTOR_SIGNAL_MINUS,
  BETWEEN_HEATER_WIRES,
  BETWEEN_SIGNAL_WIRES,
  HEATER_PLUS_TO_SIGNAL_PLUS,
  HEATER_PLUS_TO_SIGNAL_MINUS,
  HEATER_MINUS_TO_SIGNAL_PLUS,
  HEATER_MINUS_TO_SIGNAL_MINUS,
  /** Each conductor to the cable's shield. */
  TO_SHIELD,
  /** Where heater lead and cable are joined. */
  JOINT_HEATER,
  /** Where thermocouple and cable are joined. */
  JOINT_SIGNAL,
  SUPPLY_INSIDE
}
