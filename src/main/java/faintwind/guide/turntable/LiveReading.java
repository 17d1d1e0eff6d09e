package faintwind.guide.turntable;

import java.util.OptionalDouble;

/**
 * One reading of the instrument on the arm.
 *
 * @param time_s on the recording's clock, s; rises from reading to reading
 * @param signal in the recording's unit
 * @param supply_V heater supply at the balls, V
 */
public record LiveReading(double time_s, double signal, OptionalDouble supply_V) {}
