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
  static final double LEAST_LAG_S = 0.3;
  static final double LONGEST_STEP_S = 2;
  static final double MODEL_NOISE_K2_S = 1e-8;
  static final int TERMS = 6;
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

  private final StillLoss still;
  private final double ballShare;
  private final double heaterShare;
  private final double heaterTime_s;
  private final double beadTime_s;

  private final double[] mean = new double[SIZE];
  private final double[] covariance = new double[SIZE * SIZE];
  private final double[] transition = new double[SIZE * SIZE];
  private final double[] jacobian = new double[SIZE * SIZE];
  private final double[] power = new double[SIZE * SIZE];
  private final double[] product = new double[SIZE * SIZE];
  private final double[] stepTransition = new double[SIZE * SIZE];
  private final double[] rate = new double[SIZE];
  private final double[] spare = new double[SIZE];

  HeatState(FieldFormula formula) {
    still = new StillLoss(formula);
    ThermalPath path = formula.path();
    heaterShare = Math.min(0.5, Math.max(0, path.heaterShare()));
    ballShare = 1 - heaterShare;
    heaterTime_s = Math.max(LEAST_LAG_S, path.heaterTime_s());
    beadTime_s = Math.max(LEAST_LAG_S, path.beadTime_s());
  }

  public double[] mean() {
    return mean;
  }

  double[] covariance() {
    return covariance;
  }

  /** Transition over the last {@link #advance}, row by row. */
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
    return covariance[SIZE * SIZE - 1] / (ratio * ratio);
  }

  void copyFrom(HeatState other) {
    System.arraycopy(other.mean, 0, mean, 0, SIZE);
    System.arraycopy(other.covariance, 0, covariance, 0, SIZE * SIZE);
  }

  /** Starts anew: nothing known of the loss, difference as just read. */
  void begin(double delta_K, double flow_K_s, double heating_K_s) {
    java.util.Arrays.fill(covariance, 0);
    mean[DELTA] = delta_K;
    mean[FLOW] = flow_K_s;
    mean[BEAD] = delta_K;
    mean[RATIO] = FIRST_RATIO;
    covariance[DELTA * SIZE + DELTA] = FIRST_DELTA_VARIANCE_K2;
    covariance[BEAD * SIZE + BEAD] = FIRST_DELTA_VARIANCE_K2;
    covariance[FLOW * SIZE + FLOW] = square(FIRST_FLOW_SHARE * heating_K_s);
    covariance[RATIO * SIZE + RATIO] = FIRST_RATIO_VARIANCE;
  }

  /** Forgets the loss and the heat flow, as when the heater is switched. */
  void forgetLoss(double heating_K_s) {
    mean[RATIO] = Math.max(1, Math.min(3, mean[RATIO]));
    covariance[FLOW * SIZE + FLOW] += square(SWITCHED_FLOW_SHARE * heating_K_s);
    covariance[RATIO * SIZE + RATIO] += SWITCHED_RATIO_VARIANCE;
  }

  private static double square(double x) {
    return x * x;
  }

  /** Leaves room for a sudden change of the loss ratio with this variance. */
  void leaveRoom(double variance) {
    covariance[SIZE * SIZE - 1] += variance;
  }

  /**
   * The heater was lost at some moment within a time from now on: what it still gave until then
   * goes, as all its heat does, through the resistor.
   */
  void lostWithin(double within_s, double heating_K_s) {
    double more_K_s = 0.5 * within_s * heating_K_s / heaterTime_s;
    mean[FLOW] += more_K_s;
    covariance[FLOW * SIZE + FLOW] += more_K_s * more_K_s / 3;
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
    identity(transition);
    double ratio = Math.max(1, Math.min(GREATEST_RATIO, mean[RATIO]));
    double walk = walk2_1_s * ratio * ratio;
    for (int i = 0; i < steps; i++) {
      step(h, heating_K_s, air);
      multiply(stepTransition, transition, product);
      System.arraycopy(product, 0, transition, 0, SIZE * SIZE);
      spread(h, walk);
    }
  }

  private void step(double h, double heating_K_s, AirPoint air) {
    double delta = mean[DELTA];
    double still_1_s = still.at(delta, air);
    double ratio = Math.max(LEAST_RATIO, mean[RATIO]);
    double loss = still_1_s * ratio;
    fillJacobian(h, delta, loss, still.slope() * ratio);
    double byRatio = -h * still_1_s * delta / ballShare;
    jacobian[3] = byRatio;
    jacobian[7] = -heaterShare / heaterTime_s * byRatio;
    rate[DELTA] = h * (mean[FLOW] - loss * delta) / ballShare;
    rate[FLOW] = (h * (heating_K_s - mean[FLOW]) - heaterShare * rate[DELTA]) / heaterTime_s;
    rate[BEAD] = h * (delta - mean[BEAD]) / beadTime_s;
    rate[RATIO] = 0;
    identity(stepTransition);
    identity(power);
    for (int k = 1; k <= TERMS; k++) {
      for (int i = 0; i < 3; i++) {
        mean[i] += rate[i];
      }
      multiply(jacobian, power, product);
      for (int i = 0; i < SIZE * SIZE; i++) {
        power[i] = product[i] / k;
        stepTransition[i] += power[i];
      }
      for (int i = 0; i < 3; i++) {
        spare[i] =
            (jacobian[i * SIZE] * rate[0]
                    + jacobian[i * SIZE + 1] * rate[1]
                    + jacobian[i * SIZE + 2] * rate[2])
                / (k + 1);
      }
      System.arraycopy(spare, 0, rate, 0, 3);
    }
  }

  private void fillJacobian(double h, double delta, double loss, double slope) {
    double[] j = jacobian;
    j[0] = -h * (loss + delta * slope) / ballShare;
    j[1] = h / ballShare;
    j[2] = 0;
    double back = heaterShare / heaterTime_s;
    j[4] = -back * j[0];
    j[5] = -h / heaterTime_s - back * j[1];
    j[6] = 0;
    j[8] = h / beadTime_s;
    j[9] = 0;
    j[10] = -h / beadTime_s;
    j[11] = 0;
  }

  /** P ← Φ (P + Q/2) Φᵀ + Q/2. */
  private void spread(double h, double walk_1_s) {
    double half = 0.5 * h;
    covariance[15] += half * walk_1_s;
    covariance[0] += half * MODEL_NOISE_K2_S;
    multiply(stepTransition, covariance, product);
    for (int i = 0; i < SIZE; i++) {
      for (int j = i; j < SIZE; j++) {
        double sum = 0;
        for (int k = 0; k < SIZE; k++) {
          sum += product[i * SIZE + k] * stepTransition[j * SIZE + k];
        }
        covariance[i * SIZE + j] = sum;
        covariance[j * SIZE + i] = sum;
      }
    }
    covariance[15] += half * walk_1_s;
    covariance[0] += half * MODEL_NOISE_K2_S;
  }

  private static void multiply(double[] a, double[] b, double[] result) {
    for (int i = 0; i < SIZE; i++) {
      double a0 = a[i * SIZE];
      double a1 = a[i * SIZE + 1];
      double a2 = a[i * SIZE + 2];
      double a3 = a[i * SIZE + 3];
      for (int j = 0; j < SIZE; j++) {
        result[i * SIZE + j] =
            a0 * b[j] + a1 * b[SIZE + j] + a2 * b[2 * SIZE + j] + a3 * b[3 * SIZE + j];
      }
    }
  }

  private static void identity(double[] matrix) {
    java.util.Arrays.fill(matrix, 0);
    for (int i = 0; i < SIZE; i++) {
      matrix[i * SIZE + i] = 1;
    }
  }
}
