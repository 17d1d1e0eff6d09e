package faintwind.calibration.virtual;

/**
 * One row as the made-up logger gives it.
 *
 * @param time_s time stamp, s
 * @param signal in the chain's unit
 * @param air_K air temperature beside the balls, K
 * @param supply_V heater supply at the ball, V
 */
public record VirtualSample(double time_s, double signal, double air_K, double supply_V) {}
