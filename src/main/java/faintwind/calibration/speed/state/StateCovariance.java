package faintwind.calibration.speed.state;

/**
 * Covariance of a {@link HeatMean}, its upper half row by row:
 *
 * <pre>
 *     | p0 p1 p2 p3 |
 * P = |    p4 p5 p6 |
 *     |       p7 p8 |
 *     |          p9 |
 * </pre>
 *
 * <p>in the order difference, heat flow, bead, loss ratio. Plain numbers and products written out,
 * since this is what a conversion spends its time on. For one thread.
 */
final class StateCovariance {
  /** How many numbers it has. */
  static final int KEPT = 10;

  /** Where the variance of the loss ratio stands among them. */
  static final int RATIOS = 9;

  double p0;
  double p1;
  double p2;
  double p3;
  double p4;
  double p5;
  double p6;
  double p7;
  double p8;
  double p9;

  void copyFrom(StateCovariance other) {
    p0 = other.p0;
    p1 = other.p1;
    p2 = other.p2;
    p3 = other.p3;
    p4 = other.p4;
    p5 = other.p5;
    p6 = other.p6;
    p7 = other.p7;
    p8 = other.p8;
    p9 = other.p9;
  }

  /** Quantities that do not hang together. */
  void begin(double delta2, double flow2, double bead2, double ratio2) {
    p0 = delta2;
    p4 = flow2;
    p7 = bead2;
    p9 = ratio2;
    p1 = 0;
    p2 = 0;
    p3 = 0;
    p5 = 0;
    p6 = 0;
    p8 = 0;
  }

  /** P ← Φ P Φᵀ. */
  void forwards(StateStep x) {
    double delta3 = x.x0 * p3 + x.x1 * p6 + x.x2 * p9;
    double flow3 = x.x3 * p3 + x.x4 * p6 + x.x5 * p9;
    double bead3 = x.x6 * p3 + x.x7 * p6 + x.x8 * p8 + x.x9 * p9;
    double delta0 = x.x0 * p0 + x.x1 * p1 + x.x2 * p3;
    double delta1 = x.x0 * p1 + x.x1 * p4 + x.x2 * p6;
    double delta2 = x.x0 * p2 + x.x1 * p5 + x.x2 * p8;
    double flow0 = x.x3 * p0 + x.x4 * p1 + x.x5 * p3;
    double flow1 = x.x3 * p1 + x.x4 * p4 + x.x5 * p6;
    double flow2 = x.x3 * p2 + x.x4 * p5 + x.x5 * p8;
    double bead0 = x.x6 * p0 + x.x7 * p1 + x.x8 * p2 + x.x9 * p3;
    double bead1 = x.x6 * p1 + x.x7 * p4 + x.x8 * p5 + x.x9 * p6;
    double bead2 = x.x6 * p2 + x.x7 * p5 + x.x8 * p7 + x.x9 * p8;
    p0 = delta0 * x.x0 + delta1 * x.x1 + delta3 * x.x2;
    p1 = delta0 * x.x3 + delta1 * x.x4 + delta3 * x.x5;
    p2 = delta0 * x.x6 + delta1 * x.x7 + delta2 * x.x8 + delta3 * x.x9;
    p3 = delta3;
    p4 = flow0 * x.x3 + flow1 * x.x4 + flow3 * x.x5;
    p5 = flow0 * x.x6 + flow1 * x.x7 + flow2 * x.x8 + flow3 * x.x9;
    p6 = flow3;
    p7 = bead0 * x.x6 + bead1 * x.x7 + bead2 * x.x8 + bead3 * x.x9;
    p8 = bead3;
  }

  /** P ← P − K S Kᵀ after a reading of variance S with the gain K. */
  void correct(double g0, double g1, double g2, double g3, double variance) {
    double s0 = g0 * variance;
    double s1 = g1 * variance;
    double s2 = g2 * variance;
    p0 -= s0 * g0;
    p1 -= s0 * g1;
    p2 -= s0 * g2;
    p3 -= s0 * g3;
    p4 -= s1 * g1;
    p5 -= s1 * g2;
    p6 -= s1 * g3;
    p7 -= s2 * g2;
    p8 -= s2 * g3;
    p9 -= g3 * variance * g3;
  }

  /** Its numbers in order, from a place of an array on. */
  void store(double[] store, int at) {
    store[at] = p0;
    store[at + 1] = p1;
    store[at + 2] = p2;
    store[at + 3] = p3;
    store[at + 4] = p4;
    store[at + 5] = p5;
    store[at + 6] = p6;
    store[at + 7] = p7;
    store[at + 8] = p8;
    store[at + 9] = p9;
  }
}
