package faintwind.calibration.speed.state;

import java.util.Arrays;

/**
 * Products of the matrices of a {@link HeatState}, written out, since most of their elements are
 * known: ball and resistor do not feel the bead, and nothing changes the loss ratio over a step.
 * With x for what must be kept, in its order in an array,
 *
 * <pre>
 *     | x0 x1 .  x2 |        | y0 y1 y2 y3 |
 * Φ = | x3 x4 .  x5 |    P = |    y4 y5 y6 |
 *     | x6 x7 x8 x9 |        |       y7 y8 |
 *     | .  .  .  1  |        |          y9 |
 * </pre>
 *
 * for the transition over a step and a symmetric matrix. Nothing is allocated.
 */
final class StepMatrix {
  /** Elements that are kept of either kind. */
  static final int KEPT = 10;

  private StepMatrix() {}

  /** Φ ← 1. */
  static void identity(double[] step) {
    Arrays.fill(step, 0);
    step[0] = 1;
    step[4] = 1;
    step[8] = 1;
  }

  /** First ← later · first. */
  static void follow(double[] first, double[] later) {
    double a = first[0];
    double b = first[1];
    double c = first[2];
    double d = first[3];
    double e = first[4];
    double f = first[5];
    first[0] = later[0] * a + later[1] * d;
    first[1] = later[0] * b + later[1] * e;
    first[2] = later[0] * c + later[1] * f + later[2];
    first[3] = later[3] * a + later[4] * d;
    first[4] = later[3] * b + later[4] * e;
    first[5] = later[3] * c + later[4] * f + later[5];
    first[6] = later[6] * a + later[7] * d + later[8] * first[6];
    first[7] = later[6] * b + later[7] * e + later[8] * first[7];
    first[8] *= later[8];
    first[9] = later[6] * c + later[7] * f + later[8] * first[9] + later[9];
  }

  /** P ← Φ P Φᵀ. */
  static void forwards(double[] x, double[] p) {
    double ratio = p[9];
    double delta3 = x[0] * p[3] + x[1] * p[6] + x[2] * ratio;
    double flow3 = x[3] * p[3] + x[4] * p[6] + x[5] * ratio;
    double bead3 = x[6] * p[3] + x[7] * p[6] + x[8] * p[8] + x[9] * ratio;
    double delta0 = x[0] * p[0] + x[1] * p[1] + x[2] * p[3];
    double delta1 = x[0] * p[1] + x[1] * p[4] + x[2] * p[6];
    double delta2 = x[0] * p[2] + x[1] * p[5] + x[2] * p[8];
    double flow0 = x[3] * p[0] + x[4] * p[1] + x[5] * p[3];
    double flow1 = x[3] * p[1] + x[4] * p[4] + x[5] * p[6];
    double flow2 = x[3] * p[2] + x[4] * p[5] + x[5] * p[8];
    double bead0 = x[6] * p[0] + x[7] * p[1] + x[8] * p[2] + x[9] * p[3];
    double bead1 = x[6] * p[1] + x[7] * p[4] + x[8] * p[5] + x[9] * p[6];
    double bead2 = x[6] * p[2] + x[7] * p[5] + x[8] * p[7] + x[9] * p[8];
    p[0] = delta0 * x[0] + delta1 * x[1] + delta3 * x[2];
    p[1] = delta0 * x[3] + delta1 * x[4] + delta3 * x[5];
    p[2] = delta0 * x[6] + delta1 * x[7] + delta2 * x[8] + delta3 * x[9];
    p[3] = delta3;
    p[4] = flow0 * x[3] + flow1 * x[4] + flow3 * x[5];
    p[5] = flow0 * x[6] + flow1 * x[7] + flow2 * x[8] + flow3 * x[9];
    p[6] = flow3;
    p[7] = bead0 * x[6] + bead1 * x[7] + bead2 * x[8] + bead3 * x[9];
    p[8] = bead3;
  }

  /** Λ ← Φᵀ Λ Φ and λ ← Φᵀ λ for a Φ that begins at a place of a longer array. */
  static void backwards(double[] x, int at, double[] big, double[] small) {
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
    small[3] += x2 * small[0] + x5 * small[1] + x9 * small[2];
    double lambda0 = small[0];
    small[0] = x0 * lambda0 + x3 * small[1] + x6 * small[2];
    small[1] = x1 * lambda0 + x4 * small[1] + x7 * small[2];
    small[2] *= x8;
    double delta0 = big[0] * x0 + big[1] * x3 + big[2] * x6;
    double flow0 = big[1] * x0 + big[4] * x3 + big[5] * x6;
    double bead0 = big[2] * x0 + big[5] * x3 + big[7] * x6;
    double delta1 = big[0] * x1 + big[1] * x4 + big[2] * x7;
    double flow1 = big[1] * x1 + big[4] * x4 + big[5] * x7;
    double bead1 = big[2] * x1 + big[5] * x4 + big[7] * x7;
    double delta3 = big[0] * x2 + big[1] * x5 + big[2] * x9 + big[3];
    double flow3 = big[1] * x2 + big[4] * x5 + big[5] * x9 + big[6];
    double bead3 = big[2] * x2 + big[5] * x5 + big[7] * x9 + big[8];
    double ratio3 = big[3] * x2 + big[6] * x5 + big[8] * x9 + big[9];
    big[0] = x0 * delta0 + x3 * flow0 + x6 * bead0;
    big[1] = x0 * delta1 + x3 * flow1 + x6 * bead1;
    big[2] = x8 * bead0;
    big[3] = x0 * delta3 + x3 * flow3 + x6 * bead3;
    big[4] = x1 * delta1 + x4 * flow1 + x7 * bead1;
    big[5] = x8 * bead1;
    big[6] = x1 * delta3 + x4 * flow3 + x7 * bead3;
    big[7] *= x8 * x8;
    big[8] = x8 * bead3;
    big[9] = x2 * delta3 + x5 * flow3 + x9 * bead3 + ratio3;
  }
}
