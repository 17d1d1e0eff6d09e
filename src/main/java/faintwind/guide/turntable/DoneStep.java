package faintwind.guide.turntable;

import faintwind.calibration.plan.PlannedStep;

/**
 * A planned step as it happened, on the recording's clock.
 *
 * @param step as planned
 * @param from_s when it began, s
 * @param to_s when it ended, s
 */
public record DoneStep(PlannedStep step, double from_s, double to_s) {}
