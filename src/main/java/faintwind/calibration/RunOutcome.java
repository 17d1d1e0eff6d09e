package faintwind.calibration;

import java.util.OptionalDouble;

/**
 * What became of one row of the runs table.
 *
 * @param run name
 * @param speed_m_s air speed past the ball while it was turned or in the reference flow; empty for
 *     still and zero runs
 * @param u_speed_m_s its standard uncertainty
 * @param residual relative difference between the speed the fit prefers and the arm's; for still
 *     and zero runs the root mean square residual in the signal's unit
 * @param used whether the fit used it
 * @param why bundle key of the reason where it was not used or was weighted down, empty otherwise
 */
public record RunOutcome(
    String run,
    OptionalDouble speed_m_s,
    OptionalDouble u_speed_m_s,
    double residual,
    boolean used,
    String why) {}
