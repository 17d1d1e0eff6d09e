package faintwind.calibration.fit.numerics;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ResponseModel;

/**
 * The loss of a ball, asked for at one moment of a track after the other. Where speed and
 * difference have changed by less than {@link #NEAR} since it was worked out last, it is the
 * tangent of then, with the changes of then: two of the four stages of a step lie so near to
 * another, and all of them where the signal is settled.
 *
 * <p>The bound: the forced part goes at most with the speed, its curvature is that of a power n of
 * it, |n (n − 1)| ≤ ¼, and the natural part goes with the difference to ¼; so the tangent is off by
 * less than NEAR²/4 of the loss, 6e-8, and a ball at 20 K by about a microkelvin.
 */
final class LossAlong {
  private static final double NEAR = 5e-4;

  private final ResponseModel model;
  private final double[] known;
  private double[] q = {};
  private double speed_m_s;
  private double delta_K;
  private AirPoint air;

  LossAlong(ResponseModel model, int losses, AirPoint air) {
    this.model = model;
    this.known = new double[3 + losses];
    this.air = air;
  }

  /** Forgets what was asked before; these are the loss parameters from now on. */
  void begin(double[] q) {
    this.q = q;
    delta_K = Double.NaN;
  }

  /** The same as {@link ResponseModel#loss}. */
  void at(double speed, double delta, AirPoint airThen, double[] out) {
    double bySpeed = speed - speed_m_s;
    double byDelta = delta - delta_K;
    boolean near =
        Math.abs(byDelta) <= NEAR * Math.abs(delta_K)
            && Math.abs(bySpeed) <= NEAR * speed_m_s
            && airThen == air;
    if (!near) {
      model.loss(q, speed, delta, airThen, known);
      speed_m_s = speed;
      delta_K = delta;
      air = airThen;
    }
    System.arraycopy(known, 0, out, 0, known.length);
    if (near) {
      out[0] += known[1] * bySpeed + known[2] * byDelta;
    }
  }
}
