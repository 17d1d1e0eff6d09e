package faintwind.calibration.live;

import faintwind.calibration.speed.LogAir;
import java.util.OptionalDouble;

/**
 * One reading as a source gives it.
 *
 * @param time_s on the source's own clock, s; empty where the source tells no time
 * @param signal in the recording's unit; empty where the cell was empty
 * @param air what the reading says of the air
 * @param supply_V heater supply at the balls, V
 * @param terminal_K temperature of a compensated meter's own terminals, K
 */
public record LiveSample(
    OptionalDouble time_s,
    OptionalDouble signal,
    LogAir air,
    OptionalDouble supply_V,
    OptionalDouble terminal_K) {}
