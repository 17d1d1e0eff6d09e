package faintwind.calibration.complete;

import java.util.OptionalDouble;

/**
 * Inputs of the formula and the speed that follows, to six digits.
 *
 * @param signal as recorded, signal unit
 * @param rate its change, signal unit per second
 * @param air_C air temperature
 * @param pressure_hPa air pressure
 * @param rh_pct relative humidity
 * @param supply_V heater supply; empty where the calibration knows none
 * @param speed_m_s the air speed
 */
public record TestVector(
    double signal,
    double rate,
    double air_C,
    double pressure_hPa,
    double rh_pct,
    OptionalDouble supply_V,
    double speed_m_s) {}
