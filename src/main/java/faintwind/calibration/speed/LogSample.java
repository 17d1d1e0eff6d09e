package faintwind.calibration.speed;

import java.util.OptionalDouble;

/**
 * One row of a field log, as far as it could be read.
 *
 * @param time_s time on the log's clock, s
 * @param signal in the calibration's unit and polarity
 * @param air what the row says of the air
 * @param supply_V heater supply, V
 */
public record LogSample(
    OptionalDouble time_s, OptionalDouble signal, LogAir air, OptionalDouble supply_V) {}
