package faintwind.guide.checklist;

import java.util.Locale;

/** Where a tip of the meter can go. */
public enum ProbePoint {
  // the resistor's own legs, and the thin leads joined to them
  LEG_A,
  LEG_B,
  LEAD_A,
  LEAD_B,
  HEATED_BALL,
  REFERENCE_BALL,
  LOOP_PLUS,
  LOOP_MINUS,
  /** Free end of the wire on junction 1. */
  JUNCTION_1,
  /** Free end of the wire on junction 2. */
  JUNCTION_2,
  /** Bare end of a lead whose resistor lies on the plate with body, joints and bent leg. */
  HEATER_BODY,
  /** A metal plate on which coated parts lie. */
  PLATE,
  // the cable: conductors at the end of the logger and supply, and at the end of the balls
  HEATER_PLUS_NEAR,
  HEATER_PLUS_BALLS,
  HEATER_MINUS_NEAR,
  HEATER_MINUS_BALLS,
  SIGNAL_PLUS_NEAR,
  SIGNAL_PLUS_BALLS,
  SIGNAL_MINUS_NEAR,
  SIGNAL_MINUS_BALLS,
  SUPPLY_PLUS,
  // the fused supply before anything is connected to it
  FUSED_PLUS,
  FUSED_MINUS,
  // the known resistors on which the meter is proven, and its own tips held together
  PROOF_1_A,
  PROOF_1_B,
  PROOF_10_A,
  PROOF_10_B,
  TIP_RED,
  TIP_BLACK;

  /** Whether it is of a known resistor or of the meter, and of nothing that is built. */
  public boolean isOfProof() {
    return compareTo(PROOF_1_A) >= 0;
  }

  /** The word in data files and drawings. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
