package faintwind.job.turntable;

/**
 * What a person noted at the turntable.
 *
 * @param time_s when, on the recording's clock
 * @param text what happened
 */
public record SessionNote(double time_s, String text) {}
