package faintwind.physics.design;

import faintwind.physics.part.LoggerProfile;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * What the logger can tell apart. Readings once a second over the averaging time: the noise falls
 * with their root, the rounding to steps does not.
 */
public final class Detection {
  /**
   * Share of the still-air delta that draughts and room convection hide; this project's own
   * simulation study puts the physical limit near it.
   */
  private static final double STILL_SHARE = 0.015;

  /** Difference of the air between two balls a hand apart, K (common practice, no source). */
  public static final double BETWEEN_BALLS_K = 0.1;

  private static final double COVERAGE = 2;
  private static final double FASTEST_M_S = 20;

  private final SenseDesign sense;
  private final DesignAtCorner model;

  public Detection(SenseDesign sense, DesignAtCorner model) {
    this.sense = sense;
    this.model = model;
  }

  /** Standard uncertainty of an averaged reading, V before the amplifier. */
  double u_V() {
    LoggerProfile logger = sense.logger();
    double noise = logger.noise_V() / Math.sqrt(Math.max(1, sense.averaging_s()));
    return Math.hypot(noise, logger.step_V() / Math.sqrt(12)) / sense.gain();
  }

  /** Smallest difference that can be told, K: twice the standard uncertainty over the slope. */
  public double resolution_K(double delta_K) {
    double slope = (model.signal_V(delta_K + 0.5) - model.signal_V(delta_K - 0.5));
    return COVERAGE * u_V() / slope;
  }

  /** The same as a speed, m/s. */
  public double resolution_m_s(double speed_m_s) {
    double delta = model.delta_K(speed_m_s);
    return resolution_K(delta) / Math.abs(model.slope_K_per_m_s(speed_m_s));
  }

  /** What a difference of the air between the balls does to the speed, as a share of it. */
  public double betweenBallsShare(double speed_m_s) {
    return BETWEEN_BALLS_K / Math.abs(model.slope_K_per_m_s(speed_m_s)) / speed_m_s;
  }

  /** Part of the smallest change from still air that the logger is to blame for, K. */
  public double loggerPart_K(double still_K) {
    return Math.sqrt(2) * resolution_K(still_K);
  }

  /** Part that the room is to blame for, K, at the delta of still air. */
  public static double roomPart_K(double still_K) {
    return Math.hypot(STILL_SHARE * still_K, BETWEEN_BALLS_K);
  }

  /**
   * Smallest speed that can be told from still air, m/s: where delta has fallen by logger and room
   * together (root of the sum of squares); the largest speed looked at where it never does.
   */
  public double smallest_m_s() {
    double still = model.delta_K(0);
    double needed = Math.hypot(loggerPart_K(still), roomPart_K(still));
    if (still - model.delta_K(FASTEST_M_S) <= needed) {
      return FASTEST_M_S;
    }
    return new BrentSolver(1e-9, 1e-7)
        .solve(200, u -> still - model.delta_K(u) - needed, 0, FASTEST_M_S);
  }
}
