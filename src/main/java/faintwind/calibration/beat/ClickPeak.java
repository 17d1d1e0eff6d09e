package faintwind.calibration.beat;

/**
 * A candidate.
 *
 * @param time_s when
 * @param score logarithm of its energy over that around it
 */
record ClickPeak(double time_s, double score) {}
