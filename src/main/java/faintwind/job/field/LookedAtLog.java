package faintwind.job.field;

import faintwind.calibration.field.FieldSummary;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A converted log to be looked at.
 *
 * @param log the file
 * @param start when its time 0 was
 * @param signal column of the signal with its unit
 * @param summary counts and range
 * @param rows the rows
 * @param figures mean and the like over its minutes; empty where none of them means anything
 */
public record LookedAtLog(
    Path log,
    Optional<OffsetDateTime> start,
    String signal,
    ConversionSummary summary,
    FieldRows rows,
    Optional<FieldSummary> figures) {}
