package faintwind.calibration.build;

import faintwind.calibration.run.Uncertain;
import java.util.Optional;

/**
 * What the recordings alone show of the instrument, freed of what the fit was told beforehand.
 *
 * @param heating_K_s heating power over heat capacity, K/s
 * @param still_K difference in still air, K
 * @param leadShare share of the leads in the loss; empty where the recordings do not tell
 * @param glueTime_s time in which the resistor warms the ball; empty where they do not tell
 * @param signalPerKelvin signal per kelvin that the fit took for granted, signal unit
 */
public record FoundByFit(
    Uncertain heating_K_s,
    Uncertain still_K,
    Optional<Uncertain> leadShare,
    Optional<Uncertain> glueTime_s,
    double signalPerKelvin) {}
