package faintwind.calibration.speed.state;

import faintwind.calibration.response.ThermalPath;
import java.util.Arrays;

/**
 * One step of the heat balance: how far ball, resistor and bead move, and the transition
 *
 * <pre>
 *     | x0 x1 .  x2 |
 * Φ = | x3 x4 .  x5 |
 *     | x6 x7 x8 x9 |
 *     | .  .  .  1  |
 * </pre>
 *
 * <p>in the order difference, heat flow, bead, loss ratio: ball and resistor do not feel the bead,
 * and nothing changes the loss ratio over a step. x ← x + φ(A) A x with φ(A) = 1 + A/2 + … + A⁵/6!,
 * and Φ = 1 + φ(A) A. Plain numbers and products written out, since this is what a conversion
 * spends its time on. For one thread.
 */
final class StateStep {
  static final double LEAST_LAG_S = 0.3;
  static final int TERMS = 6;
  static final double LEAST_RATIO = 0.3;

  /** How many numbers of the transition are kept. */
  static final int KEPT = 10;

  private static final double S1 = 1 / 2.;
  private static final double S2 = 1 / 6.;
  private static final double S3 = 1 / 24.;
  private static final double S4 = 1 / 120.;
  private static final double S5 = 1 / 720.;

  double x0;
  double x1;
  double x2;
  double x3;
  double x4;
  double x5;
  double x6;
  double x7;
  double x8;
  double x9;

  /** How far difference, heat flow and bead move. */
  double moveDelta_K;

  double moveFlow_K_s;
  double moveBead_K;

  private final double ballShare;
  private final double heaterTime_s;
  private final double beadTime_s;

  /** What the resistor's flow loses for each kelvin that the ball rises. */
  private final double back;

  private double perBall;
  private double perHeater;
  private double perBead;
  private double w1;
  private double w2;
  private double w3;
  private double w4;
  private double beadSelf;
  private double duration_s;
  private double w0;

  StateStep(ThermalPath path) {
    double heaterShare = Math.min(0.5, Math.max(0, path.heaterShare()));
    ballShare = 1 - heaterShare;
    heaterTime_s = Math.max(LEAST_LAG_S, path.heaterTime_s());
    beadTime_s = Math.max(LEAST_LAG_S, path.beadTime_s());
    back = heaterShare / heaterTime_s;
  }

  double heaterTime_s() {
    return heaterTime_s;
  }

  double beadTime_s() {
    return beadTime_s;
  }

  /** How long the steps from now on last, s; mostly as long as those before. */
  void lasts(double step_s) {
    if (step_s == duration_s) {
      return;
    }
    duration_s = step_s;
    perBall = step_s / ballShare;
    perHeater = step_s / heaterTime_s;
    perBead = step_s / beadTime_s;
    w4 = S5;
    w3 = S4 - perBead * w4;
    w2 = S3 - perBead * w3;
    w1 = S2 - perBead * w2;
    w0 = S1 - perBead * w1;
    beadSelf = 1 - perBead * w0;
  }

  /**
   * Takes the step. The block B of ball and resistor has by Cayley and Hamilton the powers Bᵏ = pₖ
   * B − d pₖ₋₁ with pₖ₊₁ = t pₖ − d pₖ₋₁, trace t and determinant d; the bead's row of Aᵏ⁺¹ is c
   * (row 0 of Bᵏ − bead's row of Aᵏ), summed with weights that hang on c alone.
   *
   * @param from where it begins
   * @param still_1_s loss of still air there
   * @param slope change of that with the difference, 1/(s K)
   */
  void take(HeatMean from, double heating_K_s, double still_1_s, double slope) {
    double delta = from.delta_K;
    double flow = from.flow_K_s;
    double ratio = from.ratio;
    ratio = ratio < LEAST_RATIO ? LEAST_RATIO : ratio;
    double loss = still_1_s * ratio;
    double b00 = -perBall * (loss + delta * slope * ratio);
    double b10 = -back * b00;
    double b11 = -perHeater - back * perBall;
    double t = b00 + b11;
    double d = -b00 * perHeater;
    double p3 = t * t - d;
    double p4 = t * p3 - d * t;
    double sum = S1 + S2 * t + S3 * p3 + S4 * p4 + S5 * (t * p4 - d * p3);
    double self = 1 - d * (S2 + S3 * t + S4 * p3 + S5 * p4);
    double bead = w1 + w2 * t + w3 * p3 + w4 * p4;
    double s00 = self + sum * b00;
    double s01 = sum * perBall;
    double s10 = sum * b10;
    double s11 = self + sum * b11;
    double s20 = perBead * (w0 + b00 * bead - d * (w2 + w3 * t + w4 * p3));
    double s21 = perBead * (perBall * bead);
    x0 = 1 + b00 * s00 + perBall * s10;
    x1 = b00 * s01 + perBall * s11;
    x3 = b10 * s00 + b11 * s10;
    x4 = 1 + b10 * s01 + b11 * s11;
    x6 = perBead * (s00 - s20);
    x7 = perBead * (s01 - s21);
    x8 = 1 - perBead * beadSelf;
    double byRatio0 = -perBall * still_1_s * delta;
    double byRatio1 = -back * byRatio0;
    x2 = s00 * byRatio0 + s01 * byRatio1;
    x5 = s10 * byRatio0 + s11 * byRatio1;
    x9 = s20 * byRatio0 + s21 * byRatio1;
    double rate0 = perBall * (flow - loss * delta);
    double rate1 = perHeater * (heating_K_s - flow) - back * rate0;
    moveDelta_K = s00 * rate0 + s01 * rate1;
    moveFlow_K_s = s10 * rate0 + s11 * rate1;
    moveBead_K = s20 * rate0 + s21 * rate1 + beadSelf * perBead * (delta - from.bead_K);
  }

  /** Its numbers in order, from a place of an array on. */
  void store(double[] store, int at) {
    store[at] = x0;
    store[at + 1] = x1;
    store[at + 2] = x2;
    store[at + 3] = x3;
    store[at + 4] = x4;
    store[at + 5] = x5;
    store[at + 6] = x6;
    store[at + 7] = x7;
    store[at + 8] = x8;
    store[at + 9] = x9;
  }

  /** Nothing moves. */
  static void storeNone(double[] store, int at) {
    Arrays.fill(store, at, at + KEPT, 0);
    store[at] = 1;
    store[at + 4] = 1;
    store[at + 8] = 1;
  }

  /** First ← this · first, for a first that begins at a place of an array. */
  void follow(double[] first, int at) {
    double a = first[at];
    double b = first[at + 1];
    double c = first[at + 2];
    double d = first[at + 3];
    double e = first[at + 4];
    double f = first[at + 5];
    first[at] = x0 * a + x1 * d;
    first[at + 1] = x0 * b + x1 * e;
    first[at + 2] = x0 * c + x1 * f + x2;
    first[at + 3] = x3 * a + x4 * d;
    first[at + 4] = x3 * b + x4 * e;
    first[at + 5] = x3 * c + x4 * f + x5;
    first[at + 6] = x6 * a + x7 * d + x8 * first[at + 6];
    first[at + 7] = x6 * b + x7 * e + x8 * first[at + 7];
    first[at + 8] *= x8;
    first[at + 9] = x6 * c + x7 * f + x8 * first[at + 9] + x9;
  }
}
