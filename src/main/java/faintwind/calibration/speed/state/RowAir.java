package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;

/**
 * The air at a row.
 *
 * @param point its state
 * @param u_temperature_K standard uncertainty of its temperature: 0 where it was recorded or given
 */
public record RowAir(AirPoint point, double u_temperature_K) {}
