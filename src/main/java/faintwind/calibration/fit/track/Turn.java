package faintwind.calibration.fit.track;

/**
 * One stretch of a track in which the air moves past the ball: a turning arm or a reference flow.
 *
 * @param run name of the run
 * @param speed_m_s mean speed through the room over the counted time, negative for the other
 *     direction
 * @param start_s when it begins, track clock; minus infinity where the track begins in it
 * @param stop_s when it ends; plus infinity where the track ends in it
 * @param carries 1 where air is carried round, 0 in a reference flow
 * @param count the counted time
 * @param columns where its unknowns stand
 */
public record Turn(
    String run,
    double speed_m_s,
    double start_s,
    double stop_s,
    double carries,
    CountedTime count,
    Columns columns) {
  private static final double COMPLETE = 9;

  /**
   * Indices of the unknowns of a turn among all unknowns; −1 where there is none.
   *
   * @param speed relative error of its speed
   * @param radius relative error of the arm's radius, shared by runs on the same radius
   * @param start delay of its start, s
   * @param stop delay of its stop, s
   * @param runUp time constant with which it comes to speed, s; for an arm over that of all its
   *     runs
   * @param runDown time constant with which it comes to rest, s; for an arm over that of all its
   *     runs
   * @param arm what all runs of an arm share
   */
  public record Columns(
      int speed, int radius, int start, int stop, int runUp, int runDown, Arm arm) {
    /** Those of this turn alone, with its radius. */
    public int[] all() {
      return new int[] {speed, radius, start, stop, runUp, runDown};
    }
  }

  /**
   * Indices of what all runs of an arm share; −1 where there is none.
   *
   * @param runUp usual time constant with which the arm comes to speed, s
   * @param fromRest share of belief that turns were counted from the start of the motion
   * @param asymmetry relative gain of clockwise speed, loss of the other
   * @param runDown usual time constant with which the arm comes to rest, s
   * @param clock how late starts and stops are beside the stated ones, s
   */
  public record Arm(int runUp, int fromRest, int asymmetry, int runDown, int clock) {
    /** A flow without an arm. */
    public static final Arm NONE = new Arm(-1, -1, -1, -1, -1);

    int[] all() {
      return new int[] {runUp, fromRest, asymmetry, runDown, clock};
    }
  }

  /**
   * Share of the full speed at a time after the motion began: 1 − exp(−t/time), as of a drive with
   * friction. Common practice, no source. Beyond nine times it counts as complete.
   */
  static double ramp(double t, double time) {
    return t <= 0 ? 0 : t > COMPLETE * time ? 1 : 1 - Math.exp(-t / time);
  }

  static double rampSlope(double t, double time) {
    return t <= 0 || t > COMPLETE * time ? 0 : Math.exp(-t / time) / time;
  }
}
