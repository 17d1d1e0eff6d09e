package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.Wire;
import java.util.OptionalDouble;

/**
 * The heater.
 *
 * @param series series its value is taken from
 * @param wanted_W power that the value was chosen for, W; empty where the value itself was
 * @param resistance_ohm value with its tolerance, at 20 °C, Ω
 * @param style make of the resistor
 * @param leads the two wires that feed it
 * @param leadLength_m length of each that is free in the air, m
 * @param coat_m thickness of one isolating coat, m
 */
public record HeaterDesign(
    ESeries series,
    OptionalDouble wanted_W,
    Interval resistance_ohm,
    ResistorStyle style,
    Wire leads,
    double leadLength_m,
    double coat_m) {

  /** The same with a value of its own. */
  public HeaterDesign with(Interval ohm) {
    return new HeaterDesign(
        series, OptionalDouble.empty(), ohm, style, leads, leadLength_m, coat_m);
  }

  /** The same with other leads. */
  public HeaterDesign with(Wire wire) {
    return new HeaterDesign(series, wanted_W, resistance_ohm, style, wire, leadLength_m, coat_m);
  }
}
