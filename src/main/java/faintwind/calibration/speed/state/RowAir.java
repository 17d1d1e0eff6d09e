package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;

/**
 * The air at a row.
 *
 * @param point its state
 * @param u_temperature_K standard uncertainty of its temperature: 0 where it was recorded or given
 * @param u_pressure relative standard uncertainty of its pressure, likewise
 */
public record RowAir(AirPoint point, double u_temperature_K, double u_pressure) {}
