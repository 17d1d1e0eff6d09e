package faintwind.calibration.plan;

/**
 * A plan with what it started from.
 *
 * @param request what was wanted
 * @param choice what was planned
 */
public record PlannedSession(PlanRequest request, PlanChoice choice) {}
