package faintwind.calibration.fit;

/**
 * One stretch of a track in which the air moves past the ball: a turning arm or a reference flow.
 *
 * @param run name of the run
 * @param speed_m_s speed through the room, negative for the other direction
 * @param start_s when it begins, track clock; minus infinity where the track begins in it
 * @param stop_s when it ends; plus infinity where the track ends in it
 * @param carries 1 where air is carried round, 0 in a reference flow
 * @param columns where its unknowns stand
 */
record Turn(
    String run, double speed_m_s, double start_s, double stop_s, double carries, Columns columns) {

  /**
   * Indices of the unknowns of a turn among all unknowns; −1 where there is none.
   *
   * @param speed relative error of its speed
   * @param radius relative error of the arm's radius, shared by runs on the same radius
   * @param start delay of its start, s
   * @param stop delay of its stop, s
   */
  record Columns(int speed, int radius, int start, int stop) {}

  /** Smooth step from 0 to 1 about 0, over a width. */
  static double ramp(double t, double width) {
    double z = t / width + 0.5;
    return z <= 0 ? 0 : z >= 1 ? 1 : z * z * (3 - 2 * z);
  }

  static double rampSlope(double t, double width) {
    double z = t / width + 0.5;
    return z <= 0 || z >= 1 ? 0 : 6 * z * (1 - z) / width;
  }
}
