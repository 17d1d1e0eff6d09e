package faintwind.calibration.fit.numerics;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ResponseModel;

/**
 * The loss of a ball, asked for at one moment of a track after the other. Where speed and
 * difference have hardly changed since it was worked out last, it is the tangent of then, with the
 * changes of then: two of the four stages of a step lie so near to another, and all of them where
 * the signal is settled.
 *
 * <p>The bound: the forced part goes with a power n of the speed, |n (n − 1)| ≤ ¼, and the natural
 * part with the difference to ¼; so within a share s of both the tangent is off by less than s²/4
 * of the loss.
 */
final class LossAlong {
  /** Of the heated ball: off by less than 6e-8, about a microkelvin at 20 K. */
  private static final double NEAR = 5e-4;

  /** Of the reference ball, which is off its air by tenths of a kelvin at most. */
  private static final double NEAR_REFERENCE = 0.05;

  private static final double NEAR_AIR_K = 0.02;

  private final ResponseModel model;
  private final double near;
  private final double nearAir_K;
  private final double[] known;
  private double[] q = {};
  private double speed_m_s;
  private double delta_K;
  private AirPoint air;

  private LossAlong(ResponseModel model, int losses, AirPoint air, double near, double nearAir_K) {
    this.model = model;
    this.near = near;
    this.nearAir_K = nearAir_K;
    this.known = new double[3 + losses];
    this.air = air;
  }

  static LossAlong ofHeated(ResponseModel model, int losses, AirPoint air) {
    return new LossAlong(model, losses, air, NEAR, 0);
  }

  static LossAlong ofReference(ResponseModel model, int losses, AirPoint air) {
    return new LossAlong(model, losses, air, NEAR_REFERENCE, NEAR_AIR_K);
  }

  /** Forgets what was asked before; these are the loss parameters from now on. */
  void begin(double[] q) {
    this.q = q;
    delta_K = Double.NaN;
  }

  /** The loss, and what it changes by into an array, as {@link ResponseModel#loss} has it. */
  void at(double speed, double delta, AirPoint airThen, double[] out) {
    double loss = at(speed, delta, airThen);
    System.arraycopy(known, 0, out, 0, known.length);
    out[0] = loss;
  }

  /** The loss alone, 1/s. */
  double at(double speed, double delta, AirPoint airThen) {
    double bySpeed = speed - speed_m_s;
    double byDelta = delta - delta_K;
    if (Math.abs(byDelta) <= near * Math.abs(delta_K)
        && Math.abs(bySpeed) <= near * speed_m_s
        && airThen.isNear(air, nearAir_K)) {
      return known[0] + known[1] * bySpeed + known[2] * byDelta;
    }
    model.loss(q, speed, delta, airThen, known);
    speed_m_s = speed;
    delta_K = delta;
    air = airThen;
    return known[0];
  }
}
