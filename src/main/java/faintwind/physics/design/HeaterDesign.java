package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.Wire;

/**
 * The heater.
 *
 * @param series series its value is taken from
 * @param resistance_ohm value with its tolerance, at 20 °C, Ω
 * @param style make of the resistor
 * @param leads the two wires that feed it
 * @param leadLength_m length of each that is free in the air, m
 * @param coat_m thickness of one isolating coat, m
 */
public record HeaterDesign(
    ESeries series,
    Interval resistance_ohm,
    ResistorStyle style,
    Wire leads,
    double leadLength_m,
    double coat_m) {}
