package faintwind.calibration.run;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the numbers in the signal column are.
 *
 * @param unit unit of the signal
 * @param chain what stands between junctions and file
 * @param thermocouple type letter, where known
 * @param perKelvin nominal signal per kelvin at the reference air state; only the scale of the fit,
 *     so that its physics terms have their usual size
 * @param supply_V supply at which the heating rate is stated; empty where no supply was recorded
 */
public record SignalPath(
    SignalUnit unit,
    SignalChain chain,
    Optional<String> thermocouple,
    double perKelvin,
    OptionalDouble supply_V) {}
