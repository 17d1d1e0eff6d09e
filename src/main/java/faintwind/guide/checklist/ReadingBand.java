package faintwind.guide.checklist;

import faintwind.record.ReadingVerdict;

/**
 * One verdict on a reading and when it holds.
 *
 * @param verdict good, doubtful or stop
 * @param when over {@code value} (the reading in its unit), names of the design sheet and other
 *     readings
 * @param words what is said; may hold {@code {values}}
 */
public record ReadingBand(ReadingVerdict verdict, Condition when, String words) {}
