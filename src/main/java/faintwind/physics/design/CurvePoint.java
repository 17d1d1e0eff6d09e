package faintwind.physics.design;

import faintwind.physics.Interval;

/**
 * The prediction at one speed.
 *
 * @param speed_m_s air speed, m/s
 * @param delta_K delta with its band, K
 * @param timeConstant_s time constant with its band, s
 * @param signal_V signal at the logger, after the amplifier, V
 * @param resolution_m_s smallest change of speed that the logger can tell here, m/s
 * @param inRange whether every correlation is within its published range
 */
public record CurvePoint(
    double speed_m_s,
    Interval delta_K,
    Interval timeConstant_s,
    double signal_V,
    double resolution_m_s,
    boolean inRange) {}
