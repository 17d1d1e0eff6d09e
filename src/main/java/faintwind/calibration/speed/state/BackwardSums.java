package faintwind.calibration.speed.state;

/**
 * What the readings after a row say of its state: λ and Λ of the modified Bryson–Frazier recursion
 * (Bierman 1973), kept as {@link StateCovariance} keeps a covariance. Plain numbers and products
 * written out. For one thread.
 */
final class BackwardSums {
  double l0;
  double l1;
  double l2;
  double l3;
  double b0;
  double b1;
  double b2;
  double b3;
  double b4;
  double b5;
  double b6;
  double b7;
  double b8;
  double b9;

  void clear() {
    l0 = 0;
    l1 = 0;
    l2 = 0;
    l3 = 0;
    b0 = 0;
    b1 = 0;
    b2 = 0;
    b3 = 0;
    b4 = 0;
    b5 = 0;
    b6 = 0;
    b7 = 0;
    b8 = 0;
    b9 = 0;
  }

  /** What is taken off a state's quantity whose row of the covariance this is. */
  double change(double p0, double p1, double p2, double p3) {
    return p0 * l0 + p1 * l1 + p2 * l2 + p3 * l3;
  }

  /** What is taken off its variance. */
  double less(double p0, double p1, double p2, double p3) {
    return p0 * (b0 * p0 + b1 * p1 + b2 * p2 + b3 * p3)
        + p1 * (b1 * p0 + b4 * p1 + b5 * p2 + b6 * p3)
        + p2 * (b2 * p0 + b5 * p1 + b7 * p2 + b8 * p3)
        + p3 * (b3 * p0 + b6 * p1 + b8 * p2 + b9 * p3);
  }

  /**
   * λ ← Cᵀ λ − Hᵀ ν / S, Λ ← Cᵀ Λ C + Hᵀ H / S with C = I − K H; H is of the bead only.
   *
   * @param store K from a place on
   * @param h change of the reading with the bead
   * @param missShare ν/S
   * @param weight 1/S
   */
  void overReading(double[] store, int at, double h, double missShare, double weight) {
    double g0 = store[at];
    double g1 = store[at + 1];
    double g2 = store[at + 2];
    double g3 = store[at + 3];
    l2 -= h * (change(g0, g1, g2, g3) + missShare);
    double less0 = h * (b0 * g0 + b1 * g1 + b2 * g2 + b3 * g3);
    double less1 = h * (b1 * g0 + b4 * g1 + b5 * g2 + b6 * g3);
    double less2 = h * (b2 * g0 + b5 * g1 + b7 * g2 + b8 * g3);
    double less3 = h * (b3 * g0 + b6 * g1 + b8 * g2 + b9 * g3);
    double corner = g0 * less0 + g1 * less1 + g2 * less2 + g3 * less3;
    b2 -= less0;
    b5 -= less1;
    b7 += h * (corner + h * weight) - 2 * less2;
    b8 -= less3;
  }

  /** Λ ← Φᵀ Λ Φ and λ ← Φᵀ λ for a {@link StateStep} that begins at a place of an array. */
  void overStep(double[] x, int at) {
    double x0 = x[at];
    double x1 = x[at + 1];
    double x2 = x[at + 2];
    double x3 = x[at + 3];
    double x4 = x[at + 4];
    double x5 = x[at + 5];
    double x6 = x[at + 6];
    double x7 = x[at + 7];
    double x8 = x[at + 8];
    double x9 = x[at + 9];
    l3 += x2 * l0 + x5 * l1 + x9 * l2;
    double lambda0 = l0;
    l0 = x0 * lambda0 + x3 * l1 + x6 * l2;
    l1 = x1 * lambda0 + x4 * l1 + x7 * l2;
    l2 *= x8;
    double delta0 = b0 * x0 + b1 * x3 + b2 * x6;
    double flow0 = b1 * x0 + b4 * x3 + b5 * x6;
    double bead0 = b2 * x0 + b5 * x3 + b7 * x6;
    double delta1 = b0 * x1 + b1 * x4 + b2 * x7;
    double flow1 = b1 * x1 + b4 * x4 + b5 * x7;
    double bead1 = b2 * x1 + b5 * x4 + b7 * x7;
    double delta3 = b0 * x2 + b1 * x5 + b2 * x9 + b3;
    double flow3 = b1 * x2 + b4 * x5 + b5 * x9 + b6;
    double bead3 = b2 * x2 + b5 * x5 + b7 * x9 + b8;
    b9 += b3 * x2 + b6 * x5 + b8 * x9 + x2 * delta3 + x5 * flow3 + x9 * bead3;
    b0 = x0 * delta0 + x3 * flow0 + x6 * bead0;
    b1 = x0 * delta1 + x3 * flow1 + x6 * bead1;
    b2 = x8 * bead0;
    b3 = x0 * delta3 + x3 * flow3 + x6 * bead3;
    b4 = x1 * delta1 + x4 * flow1 + x7 * bead1;
    b5 = x8 * bead1;
    b6 = x1 * delta3 + x4 * flow3 + x7 * bead3;
    b7 *= x8 * x8;
    b8 = x8 * bead3;
  }
}
