package faintwind.calibration.fit.track;

import java.util.OptionalDouble;

/**
 * The time over which the turns of a run were counted. Turns are the integral of the arm's speed
 * over it: with full speed v and run-up 1 − exp(−t/τ), 2π · radius · turns = v (time − lost), and
 * lost = τ exp(−w/τ) where the first click comes a time w after the start of the motion (the
 * integral of the ramp; its end is far behind).
 *
 * @param window_s from the first counted click to the last; infinite where nothing was counted
 * @param turn_s time of one turn
 * @param afterStart_s when the first click came after the stated start, where that is known
 * @param left exp(−w/τ) as it is expected of a click at some moment of the first turn, where not
 */
public record CountedTime(
    double window_s, double turn_s, OptionalDouble afterStart_s, double left) {
  /** At which the rise of carried air is stated, s. */
  static final double USUAL_TURN_S = 5;

  /** A flow that another instrument measured. */
  public static final CountedTime NONE =
      new CountedTime(Double.POSITIVE_INFINITY, USUAL_TURN_S, OptionalDouble.empty(), 0);

  /** Logarithm of the time of a turn over the usual one. */
  double logTurn() {
    return Math.log(turn_s / USUAL_TURN_S);
  }

  /** Full speed over the mean speed of the counted time. */
  double gain(double lost_s) {
    return window_s == Double.POSITIVE_INFINITY
        ? 1
        : window_s / (window_s - Math.min(lost_s, window_s / 2));
  }

  /**
   * Time at full speed that the run-up took from the count, s.
   *
   * @param runUp_s time constant
   * @param delay_s of the motion's start against the stated one
   * @param fromRest belief that counting began with the motion, 0 to 1
   */
  double lost_s(double runUp_s, double delay_s, double fromRest) {
    if (afterStart_s.isEmpty()) {
      return runUp_s * (fromRest + (1 - fromRest) * left);
    }
    double w = afterStart_s.getAsDouble() - delay_s;
    return w > 0 ? runUp_s * Math.exp(-w / runUp_s) : runUp_s - w;
  }

  /** Its change with the time constant. */
  double byRunUp(double runUp_s, double delay_s, double fromRest) {
    if (afterStart_s.isEmpty()) {
      return fromRest + (1 - fromRest) * left;
    }
    double w = afterStart_s.getAsDouble() - delay_s;
    return w > 0 ? Math.exp(-w / runUp_s) * (1 + w / runUp_s) : 1;
  }

  /** Its change with the delay. */
  double byDelay(double runUp_s, double delay_s) {
    if (afterStart_s.isEmpty()) {
      return 0;
    }
    double w = afterStart_s.getAsDouble() - delay_s;
    return w > 0 ? Math.exp(-w / runUp_s) : 1;
  }

  /** Its change with the belief. */
  double byFromRest(double runUp_s) {
    return afterStart_s.isEmpty() ? runUp_s * (1 - left) : 0;
  }
}
