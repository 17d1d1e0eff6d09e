package faintwind.calibration.live;

import faintwind.calibration.speed.LogAir;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a live recording, as it stands in its file.
 *
 * @param time_s on the file's clock, s; rises from row to row
 * @param signal in the recording's unit; empty where the source gave none
 * @param air what the row says of the air
 * @param supply_V heater supply at the balls, V
 * @param terminal_K temperature of a compensated meter's own terminals, K
 * @param gap why the record has a break just before this row, where it has one
 * @param received when the row arrived
 */
public record LiveRow(
    double time_s,
    OptionalDouble signal,
    LogAir air,
    OptionalDouble supply_V,
    OptionalDouble terminal_K,
    Optional<LiveGap> gap,
    Instant received) {}
