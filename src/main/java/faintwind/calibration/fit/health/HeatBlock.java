package faintwind.calibration.fit.health;

/**
 * The heat that the ball took in one stretch of a run, over what the heater is expected to give: 1
 * where all is as a formula says.
 *
 * @param phase what the arm did
 * @param from_s first time, run file's clock
 * @param to_s last time
 * @param ratio heat taken over heat expected
 * @param u its standard uncertainty, apart from that of the other blocks
 * @param u_run standard uncertainty that it shares with the blocks of its run beside it: that of
 *     the speed, while turning
 * @param delta_K mean difference
 */
public record HeatBlock(
    Phase phase, double from_s, double to_s, double ratio, double u, double u_run, double delta_K) {

  /** What the arm did. */
  public enum Phase {
    /** At rest, before it turned, or in a still run. */
    BEFORE,
    /** Turning. */
    TURNING,
    /** At rest after it turned. */
    AFTER
  }
}
