package faintwind.physics.design;

import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.ThermocoupleType;

/**
 * The thermocouple between the balls and what reads it.
 *
 * @param type thermocouple type
 * @param gauge its wire
 * @param freeLength_m length of each of its wires free in the air at a ball, m
 * @param loopLength_m length of the pair from the balls to where it becomes copper, m
 * @param logger what reads it
 * @param gain amplifier gain before the logger, volts out per volt in
 * @param averaging_s time over which readings are averaged, s
 */
public record SenseDesign(
    ThermocoupleType type,
    ThermocoupleType.Gauge gauge,
    double freeLength_m,
    double loopLength_m,
    LoggerProfile logger,
    double gain,
    double averaging_s) {}
