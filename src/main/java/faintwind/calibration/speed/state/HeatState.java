package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ThermalPath;

/**
 * The heat balance as a filter's process: difference Δ, heat flow q out of the resistor (as a
 * heating rate), bead and g = loss / loss of still air, with their covariance; in g the balance is
 * all but linear, so that no step of the wind bends the estimate. The equations are those of {@link
 * ThermalPath}; over one step the linearised system is solved by its exponential series
 * (exponential Rosenbrock–Euler, Hochbruck and Ostermann 2010), so that steps of many seconds stay
 * exact. The change of the room's temperature is left out: its term is below a thousandth of the
 * balance indoors. Reuses its arrays; for one thread.
 */
public final class HeatState {
  public static final int SIZE = 4;
  public static final int DELTA = 0;
  public static final int FLOW = 1;
  public static final int BEAD = 2;
  public static final int RATIO = 3;

  /** Where the variances stand among the elements that are kept of the covariance. */
  static final int DELTAS = 0;

  static final int FLOWS = 4;
  static final int BEADS = 7;
  static final int RATIOS = 9;

  static final double LEAST_LAG_S = 0.3;
  static final double LONGEST_STEP_S = 2;
  static final double MODEL_NOISE_K2_S = 1e-8;
  static final int TERMS = 6;

  /** 1/(k + 1)! */
  private static final double[] SHARE = {1, 1 / 2., 1 / 6., 1 / 24., 1 / 120., 1 / 720.};

  static final double LEAST_RATIO = 0.3;
  static final double GREATEST_RATIO = 20;

  /** What is believed before any row: loss ratio, and the variances of the state. */
  static final double FIRST_RATIO = 1.8;

  static final double FIRST_RATIO_VARIANCE = 3;
  static final double FIRST_DELTA_VARIANCE_K2 = 0.25;
  static final double FIRST_FLOW_SHARE = 0.1;

  /** What is added where the heater was switched. */
  static final double SWITCHED_RATIO_VARIANCE = 2;

  static final double SWITCHED_FLOW_SHARE = 0.5;

  private final FieldFormula formula;
  private final double ballShare;
  private final double heaterShare;
  private final double heaterTime_s;
  private final double beadTime_s;

  private final double[] mean = new double[SIZE];
  private final double[] covariance = new double[StepMatrix.KEPT];
  private double[] transition = new double[StepMatrix.KEPT];
  private double[] step = new double[StepMatrix.KEPT];
  private double stillAt_K;
  private double still_1_s;
  private double stillSlope;

  HeatState(FieldFormula formula) {
    this.formula = formula;
    ThermalPath path = formula.path();
    heaterShare = Math.min(0.5, Math.max(0, path.heaterShare()));
    ballShare = 1 - heaterShare;
    heaterTime_s = Math.max(LEAST_LAG_S, path.heaterTime_s());
    beadTime_s = Math.max(LEAST_LAG_S, path.beadTime_s());
  }

  public double[] mean() {
    return mean;
  }

  /** Covariance of the state, as {@link StepMatrix} keeps a symmetric matrix. */
  double[] covariance() {
    return covariance;
  }

  /** Transition over the last {@link #advance}, as {@link StepMatrix} keeps it. */
  double[] transition() {
    return transition;
  }

  /** Loss over that of still air. */
  public double ratio() {
    return mean[RATIO];
  }

  /** Variance of ln(loss). */
  public double logVariance() {
    double ratio = Math.max(LEAST_RATIO, mean[RATIO]);
    return covariance[RATIOS] / (ratio * ratio);
  }

  void copyFrom(HeatState other) {
    System.arraycopy(other.mean, 0, mean, 0, SIZE);
    System.arraycopy(other.covariance, 0, covariance, 0, StepMatrix.KEPT);
  }

  /** Starts anew: nothing known of the loss, difference as just read. */
  void begin(double delta_K, double flow_K_s, double heating_K_s) {
    java.util.Arrays.fill(covariance, 0);
    mean[DELTA] = delta_K;
    mean[FLOW] = flow_K_s;
    mean[BEAD] = delta_K;
    mean[RATIO] = FIRST_RATIO;
    covariance[DELTAS] = FIRST_DELTA_VARIANCE_K2;
    covariance[BEADS] = FIRST_DELTA_VARIANCE_K2;
    covariance[FLOWS] = square(FIRST_FLOW_SHARE * heating_K_s);
    covariance[RATIOS] = FIRST_RATIO_VARIANCE;
  }

  /** Forgets the loss and the heat flow, as when the heater is switched. */
  void forgetLoss(double heating_K_s) {
    mean[RATIO] = Math.max(1, Math.min(3, mean[RATIO]));
    covariance[FLOWS] += square(SWITCHED_FLOW_SHARE * heating_K_s);
    covariance[RATIOS] += SWITCHED_RATIO_VARIANCE;
  }

  /** Loss of still air, by its tangent where the last step began, 1/s. */
  double stillNearby_1_s() {
    return still_1_s + stillSlope * (mean[DELTA] - stillAt_K);
  }

  private static double square(double x) {
    return x * x;
  }

  /** Leaves room for a sudden change of the loss ratio with this variance. */
  void leaveRoom(double variance) {
    covariance[RATIOS] += variance;
  }

  /**
   * The heater was lost at some moment within a time from now on: what it still gave until then
   * goes, as all its heat does, through the resistor.
   */
  void lostWithin(double within_s, double heating_K_s) {
    double more_K_s = 0.5 * within_s * heating_K_s / heaterTime_s;
    mean[FLOW] += more_K_s;
    covariance[FLOWS] += more_K_s * more_K_s / 3;
  }

  /**
   * Advances in time.
   *
   * @param duration_s how far
   * @param heating_K_s heating rate meanwhile
   * @param walk2_1_s variance of the random walk of the loss, relative, per second
   */
  void advance(double duration_s, double heating_K_s, double walk2_1_s, AirPoint air) {
    double longest_s = Math.min(LONGEST_STEP_S, Math.min(beadTime_s, heaterTime_s));
    int steps = (int) Math.ceil(duration_s / longest_s);
    double h = duration_s / steps;
    double ratio = Math.max(1, Math.min(GREATEST_RATIO, mean[RATIO]));
    double walk = walk2_1_s * ratio * ratio;
    if (steps == 0) {
      StepMatrix.identity(transition);
    }
    for (int i = 0; i < steps; i++) {
      step(h, heating_K_s, air);
      spread(h, walk);
      if (i == 0) {
        double[] first = step;
        step = transition;
        transition = first;
      } else {
        StepMatrix.follow(transition, step);
      }
    }
  }

  /**
   * One step x ← x + φ(A) A x with φ(A) = 1 + A/2 + … + A⁵/6!, and Φ = 1 + φ(A) A. The block B of
   * ball and resistor has by Cayley and Hamilton the powers Bᵏ = pₖ B − d pₖ₋₁ with pₖ₊₁ = t pₖ − d
   * pₖ₋₁, trace t and determinant d; the bead's row of Aᵏ⁺¹ is c (row 0 of Bᵏ − bead's row of Aᵏ).
   */
  private void step(double h, double heating_K_s, AirPoint air) {
    double delta = mean[DELTA];
    still_1_s = formula.stillLoss_1_s(delta, air);
    stillSlope = formula.stillSlope();
    stillAt_K = delta;
    double ratio = Math.max(LEAST_RATIO, mean[RATIO]);
    double loss = still_1_s * ratio;
    double back = heaterShare / heaterTime_s;
    double b00 = -h * (loss + delta * stillSlope * ratio) / ballShare;
    double b01 = h / ballShare;
    double b10 = -back * b00;
    double b11 = -h / heaterTime_s - back * b01;
    double c = h / beadTime_s;
    double trace = b00 + b11;
    double determinant = b00 * b11 - b01 * b10;
    double before = 0;
    double power = 1;
    double sumBefore = 0;
    double sum = 0;
    double bead0 = 1;
    double bead1 = 0;
    double bead2 = -c;
    double row0 = 0;
    double row1 = 0;
    double row2 = 1;
    for (int k = 1; k < TERMS; k++) {
      double share = SHARE[k];
      sum += share * power;
      sumBefore += share * before;
      row0 += share * bead0;
      row1 += share * bead1;
      row2 += share * bead2;
      bead0 = power * b00 - determinant * before - c * bead0;
      bead1 = power * b01 - c * bead1;
      bead2 *= -c;
      double next = trace * power - determinant * before;
      before = power;
      power = next;
    }
    double s00 = 1 - determinant * sumBefore + sum * b00;
    double s01 = sum * b01;
    double s10 = sum * b10;
    double s11 = 1 - determinant * sumBefore + sum * b11;
    double s20 = c * row0;
    double s21 = c * row1;
    double s22 = row2;
    step[0] = 1 + b00 * s00 + b01 * s10;
    step[1] = b00 * s01 + b01 * s11;
    step[3] = b10 * s00 + b11 * s10;
    step[4] = 1 + b10 * s01 + b11 * s11;
    step[6] = c * (s00 - s20);
    step[7] = c * (s01 - s21);
    step[8] = 1 - c * s22;
    double byRatio0 = -h * still_1_s * delta / ballShare;
    double byRatio1 = -back * byRatio0;
    step[2] = s00 * byRatio0 + s01 * byRatio1;
    step[5] = s10 * byRatio0 + s11 * byRatio1;
    step[9] = s20 * byRatio0 + s21 * byRatio1;
    double rate0 = h * (mean[FLOW] - loss * delta) / ballShare;
    double rate1 = (h * (heating_K_s - mean[FLOW]) - heaterShare * rate0) / heaterTime_s;
    double rate2 = c * (delta - mean[BEAD]);
    mean[DELTA] += s00 * rate0 + s01 * rate1;
    mean[FLOW] += s10 * rate0 + s11 * rate1;
    mean[BEAD] += s20 * rate0 + s21 * rate1 + s22 * rate2;
  }

  /** P ← Φ (P + Q/2) Φᵀ + Q/2. */
  private void spread(double h, double walk_1_s) {
    double half = 0.5 * h;
    covariance[RATIOS] += half * walk_1_s;
    covariance[DELTAS] += half * MODEL_NOISE_K2_S;
    StepMatrix.forwards(step, covariance);
    covariance[RATIOS] += half * walk_1_s;
    covariance[DELTAS] += half * MODEL_NOISE_K2_S;
  }
}
